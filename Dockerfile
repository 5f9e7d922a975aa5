# Builds the jar, records a training run in an AOT cache, and runs from that cache: no build tool, no shell needed.
# A release names both base images by digest: see the recipe in DEVELOPERS.md. A tag is for trying out.
ARG BUILD_IMAGE=maven:3.9-eclipse-temurin-25
ARG RUN_IMAGE=eclipse-temurin:25-jre

FROM ${BUILD_IMAGE} AS build
WORKDIR /src
COPY . .
RUN mvn -q -B -Dmaven.test.skip=true -Djacoco.skip=true package && mv target/brinebook-*.jar target/brinebook.jar

# The cache fits only the exact Java, jars and paths of its training run, so training and running share one base.
FROM ${RUN_IMAGE} AS base
# The cache stays where it was made for: moved, as by default, its pages are written to, and each replica has 28 MB of its own.
# Heap, classes, compiled code, direct buffers and stacks of 0.5 MB each stay together below 256 MB; typesetting takes more.
ENV JDK_JAVA_OPTIONS="-XX:+UseSerialGC -Xms32m -Xmx96m -XX:MaxMetaspaceSize=80m -XX:ReservedCodeCacheSize=40m -XX:MaxDirectMemorySize=16m -Xss512k -XX:TrimNativeHeapInterval=2000 -XX:-UsePerfData -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 -XX:+ExitOnOutOfMemoryError"
WORKDIR /app
COPY --from=build /src/target/lib lib
COPY --from=build /src/target/brinebook.jar ./

FROM base AS train
# Classes are laid out in the space for classes, which is more than they need afterwards.
RUN java -XX:AOTCacheOutput=brinebook.aot -XX:MaxMetaspaceSize=256m -cp brinebook.jar dev.brinebook.tool.TrainingRun && test -s brinebook.aot

FROM base
COPY --from=train /app/brinebook.aot ./
# Bill of materials of the image: every library with its version and licence.
COPY --from=build /src/target/bom.json /src/target/THIRD-PARTY.txt ./
USER 10001:10001
EXPOSE 8080 9090
# A cache that does not fit ends the process, rather than causing a slow start that goes unnoticed.
ENTRYPOINT ["java", "-XX:AOTCache=brinebook.aot", "-XX:AOTMode=on", "-jar", "brinebook.jar"]

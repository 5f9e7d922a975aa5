# Builds the jar, then runs it from a slim image without a build tool.
FROM maven:3.9-eclipse-temurin-25 AS build
WORKDIR /src
COPY pom.xml .
RUN mvn -q -B dependency:go-offline
COPY src src
COPY openapi openapi
RUN mvn -q -B -DskipTests -Djacoco.skip package

FROM eclipse-temurin:25-jre
WORKDIR /app
COPY --from=build /src/target/lib lib
COPY --from=build /src/target/brinebook-1.0.0.jar brinebook.jar
USER 10001
EXPOSE 8080 9090
ENTRYPOINT ["java", "-XX:+UseSerialGC", "-XX:MaxRAMPercentage=60", "-jar", "brinebook.jar"]

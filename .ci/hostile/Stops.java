// SPDX-License-Identifier: Apache-2.0
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.Supplier;

/** Stops under load. */
final class Stops {

    private static final String LABEL = "8 stops under 64 keep-alive connections";

    private final Lab lab;

    Stops(Lab lab) {
        this.lab = lab;
    }

    /** One answer lost is tried again: a caller that the machine stops for a second and a half meets a closed connection. */
    void stops() throws IOException, InterruptedException {
        lab.close(); // its port is needed
        if (lost() == 1) {
            lab.breach(lost() > 0, "stops: " + LABEL + ": answers were lost in both tries");
        }
    }

    private int lost() throws IOException, InterruptedException {
        Tally all = new Tally();
        Supplier<byte[]> requests = () -> Requests.post(Requests.CONVERSION, Requests.JSON, Requests.conversion());
        for (int stop = 0; stop < 8; stop++) {
            Path log = lab.work().resolve("stops-" + stop + ".log");
            try (Service service = Service.start(lab.jar(), lab.port(), log, Map.of("DRAIN_SECONDS", "" + stop % 2))) {
                service.keepOnItsProcessor();
                Attack attack = new Attack(service);
                for (int each = 0; each < 64; each++) {
                    attack.calls(0, Lab.caller(each), requests, Integer.MAX_VALUE, each % 4 * 0.003);
                }
                attack.begin();
                boolean ended;
                try (attack) {
                    Thread.sleep(1_500);
                    attack.connectNoMore(); // as a proxy that sees readiness go
                    service.terminate();
                    ended = service.endsWithin(30);
                }
                all.add(attack.tally);
                lab.breach(!ended, "stops: " + LABEL + ": it does not end");
                lab.breach(!service.faultsLogged().isEmpty(), "stops: log: " + service.faultsLogged());
            }
        }
        Scene.printOnly(LABEL, all);
        lab.breach(all.cutOffs() > 1, "stops: " + LABEL + ": " + all.cutOffs() + " of " + all.answers() + " answers were lost");
        lab.breach(all.of(200) + all.of(503) != all.answers() || all.refusalsWithoutRetry() > 0, "stops: " + LABEL + ": " + all);
        return all.cutOffs();
    }
}

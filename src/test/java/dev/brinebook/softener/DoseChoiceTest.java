// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.quantity.SaltEfficiencyUnit;
import dev.brinebook.softener.DoseChoice.Option;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** The working table, common practice: 6, 8, 10 and 15 lb/ft3 give 20, 24, 27 and 30 thousand grains, always fewer a pound. */
class DoseChoiceTest {

    private static final Softener SOFTENER = Softeners.cubicFeet(1.5, 10, 54);
    /** 4,800 grains every day. */
    private static final DesignConditions DUTY = Softeners.duty(20, 0, 240, 0);
    private static final RunningCost DEAR_SALT = new RunningCost(0.45, 0);
    private static final RunningCost DEAR_WATER = new RunningCost(0.01, 50);

    private static double pounds(Option option) {
        return option.dosed().saltDoseGramsPerLitre() / Softeners.POUND_PER_CUBIC_FOOT;
    }

    private static double grainsPerPound(Option option) {
        return SaltEfficiencyUnit.GRAIN_PER_POUND.fromBase(option.dosed().saltEfficiencyGramsPerGram());
    }

    @Test
    void keepsToTheEfficiencyThatIsAskedFor() {
        DoseChoice free = DoseSearch.cheapest(SOFTENER, DUTY, DEAR_WATER);
        assertTrue(grainsPerPound(free.best()) < 2_900, "dear water asks for much salt");
        DoseChoice limited = DoseSearch.cheapest(SOFTENER, Softeners.limited(DUTY, 3, 2_900), DEAR_WATER);
        assertTrue(grainsPerPound(limited.best()) >= 2_900);
        assertTrue(pounds(limited.best()) < pounds(free.best()));
        DoseChoice none = DoseSearch.cheapest(SOFTENER, Softeners.limited(DUTY, 3, 5_000), DEAR_WATER);
        assertEquals(pounds(free.best()), pounds(none.best()), 1e-9, "what no dose has is dropped");
    }

    /** The days that are aimed at do not decide; what keeping to them would cost is said. */
    @Test
    void saysWhatTheDaysThatAreAimedAtWouldCost() {
        DoseChoice soon = DoseSearch.cheapest(SOFTENER, DUTY, DEAR_SALT);
        DesignConditions longer = Softeners.limited(DUTY, 7, 0);
        DoseChoice seldom = DoseSearch.cheapest(SOFTENER, longer, DEAR_SALT);
        assertEquals(pounds(soon.best()), pounds(seldom.best()), 1e-9);
        assertEquals(List.of(DoseChoice.Limit.INTERVAL), seldom.unmet(longer));
        DoseChoice.PricedLimit price = seldom.prices(longer).get(0);
        assertEquals(DoseChoice.Limit.INTERVAL, price.limit());
        assertTrue(!price.kept() && price.costPerYear() > 0, price.toString());
        Option lasting = seldom.options().stream().filter(option -> option.lasts(longer)).findFirst().orElseThrow();
        assertEquals(lasting.costPerYear() - seldom.best().costPerYear(), price.costPerYear(), 1e-9);
    }

    @Test
    void showsWholePoundsAndTheBest() {
        for (RunningCost cost : List.of(DEAR_SALT, DEAR_WATER, new RunningCost(0.45, 2.9), new RunningCost(0.45, 6))) {
            DoseChoice choice = DoseSearch.cheapest(SOFTENER, DUTY, cost);
            assertEquals(DoubleStream.concat(DoubleStream.iterate(6, lb -> lb <= 15, lb -> lb + 1),
                            DoubleStream.of(Math.rint(2 * pounds(choice.best())) / 2)).distinct().sorted().boxed().toList(),
                    choice.shown().stream().map(option -> Math.rint(2 * pounds(option)) / 2).toList());
            assertTrue(choice.shown().contains(choice.best()));
        }
    }

    /** Where the search for each reserve begins says nothing of where it ends. Each duty is made anew: what one found it keeps. */
    @Test
    void findsTheSameReservesWhereverItLooksFirst() {
        DoseChoice far = DoseSearch.cheapest(SOFTENER, Softeners.duty(30, 0, 120, 0.5), DEAR_SALT);
        for (double grains : new double[] {10, 19.9, 20, 20.1, 29}) {
            DoseChoice alone = DoseSearch.cheapest(SOFTENER, Softeners.duty(grains, 0, 240, 0.38), DEAR_SALT);
            for (DoseChoice similar : List.of(far, alone)) {
                assertEquals(alone.options().stream().map(Option::settings).toList(), DoseSearch.cheapest(SOFTENER,
                        Softeners.duty(grains, 0, 240, 0.38), DEAR_SALT, MeterStart.DELAYED, similar).options().stream()
                        .map(Option::settings).toList());
            }
        }
    }
}

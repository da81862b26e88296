package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class SeasonWalkTest {

    /** Annual flow of the Nile at Aswan, 1871 to 1970: R data set Nile (Cobb 1978). */
    private static final double[] NILE = {
        1120, 1160, 963, 1210, 1160, 1160, 813, 1230, 1370, 1140, 995, 935, 1110, 994, 1020, 960,
        1180, 799, 958, 1140, 1100, 1210, 1150, 1250, 1260, 1220, 1030, 1100, 774, 840, 874, 694,
        940, 833, 701, 916, 692, 1020, 1050, 969, 831, 726, 456, 824, 702, 1120, 1100, 832, 764,
        821, 768, 845, 864, 862, 698, 845, 744, 796, 1040, 759, 781, 865, 845, 944, 984, 897, 822,
        1010, 771, 676, 649, 846, 812, 742, 801, 1040, 860, 874, 848, 890, 744, 749, 838, 1050, 918,
        986, 797, 923, 975, 815, 1020, 906, 901, 1170, 912, 746, 919, 718, 714, 740
    };

    /**
     * Fitted by KFAS on R: variances exp(9.622361) of reading and exp(7.292448) of a step, minus
     * the diffuse log-likelihood 632.5456, published with the example of the local level model; the
     * data is that of Durbin and Koopman 2012, ch. 2. Seasons very much shorter than a step make
     * the walk that model; a rate of 1 is taken out of the data again.
     */
    @Test
    void shortSeasonsMakeItTheLocalLevelModel() {
        double year = 1e-4;
        double straying = Math.sqrt(Math.exp(7.292448) / year);
        var x = new double[NILE.length];
        var y = new double[NILE.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = i;
            y[i] = NILE[i] - i;
        }
        double measuringSd = Math.sqrt(Math.exp(9.622361));
        var walk = SeasonWalk.along(Readings.of(x, y, measuringSd), Pace.STEADY, straying, year);
        double constants = (x.length - 1) * Math.log(2 * Math.PI) / 2;
        assertThat(constants - walk.logLikelihood(1)).isCloseTo(632.5456, within(0.05));
    }

    /** Over n years the level strays by √n times as much as in one, within one by nearly a line. */
    @Test
    void aLevelStraysWithTheRootOfTheYears() {
        var walk = walk(new double[] {0}, new double[] {0}, 1e-9, 2);
        assertThat(Math.sqrt(walk.ahead(25).aheadPerUnit())).isCloseTo(5, within(0.1));
        double soon = 0.01;
        assertThat(walk.ahead(soon).variance() + 4 * walk.ahead(soon).aheadPerUnit())
                .isCloseTo(1.5 * 4 * soon * soon, within(1e-5));
    }

    @Test
    void aSlowSeasonLastsALittleLonger() {
        double[] x = {0, 1, 2, 2.5};
        double[] y = {20, 16, 12, 11.2};
        var walk = walk(x, y, 0.1, 1.2);
        assertThat(levelAt(walk, 2.5, 4) - levelAt(walk, 2.75, 4)).isLessThan(0.85);
        assertThat(levelAt(walk, 6, 4) - levelAt(walk, 7, 4)).isCloseTo(4, within(0.01));
    }

    private static SeasonWalk walk(double[] x, double[] y, double measuringSd, double straying) {
        return SeasonWalk.along(Readings.of(x, y, measuringSd), Pace.STEADY, straying, 1);
    }

    private static double levelAt(SeasonWalk walk, double x, double rate) {
        var ahead = walk.ahead(x);
        return ahead.level() + rate * ahead.perRate();
    }

    /** Least squares by hand: 20, 16, 12 at 0, 1, 2 fall by 4 and leave nothing over. */
    @Test
    void withoutStrayingItIsLeastSquares() {
        var walk = walk(new double[] {0, 1, 2}, new double[] {20, 16, 12}, 0.5, 0);
        assertThat(walk.weighed() / walk.precision()).isCloseTo(4, within(1e-9));
        // Sxx is 2, so the rate is known to 0.5² / 2
        assertThat(walk.precision()).isCloseTo(8, within(1e-9));
        assertThat(levelAt(walk, 5, 4)).isCloseTo(0, within(1e-9));
    }

    /** What was read at one moment is one reading, off by less. */
    @Test
    void readingsOfOneMomentAreTheirMean() {
        var twice = Readings.of(new double[] {0, 0, 1}, new double[] {20, 21, 16}, 0.5);
        assertThat(twice.size()).isEqualTo(2);
        assertThat(twice.y(0)).isEqualTo(20.5);
        assertThat(twice.variance(0)).isCloseTo(0.125, within(1e-12));
        assertThat(twice.variance(1)).isEqualTo(0.25);
    }

    /** A pace's growth adds up from its rate, whatever its form: the trapezium rule beside it. */
    @Test
    void whatHasGoneIsTheSumOfTheRate() {
        for (var pace :
                new Pace[] {
                    Pace.STEADY,
                    Pace.after(0.7),
                    Pace.slowing(0.3),
                    Pace.bending(0.2),
                    Pace.slowing(-0.1)
                }) {
            double sum = 0;
            double step = 0.001;
            for (double x = pace.lag(); x < 6; x += step) {
                sum += step * (pace.at(x) + pace.at(x + step)) / 2;
            }
            assertThat(pace.gone(6)).as("%s", pace).isCloseTo(sum, within(0.01));
        }
    }
}

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
        var walk = SeasonWalk.along(x, y, measuringSd, 1, straying, year);
        double constants = (x.length - 1) * Math.log(2 * Math.PI) / 2;
        assertThat(constants - walk.logLikelihood()).isCloseTo(632.5456, within(0.05));
    }

    /** Over n years the level strays by √n times as much as in one, within one by nearly a line. */
    @Test
    void aLevelStraysWithTheRootOfTheYears() {
        var walk = SeasonWalk.along(new double[] {0}, new double[] {0}, 1e-9, 10, 2, 1);
        assertThat(Math.sqrt(walk.varianceAheadPerUnit(25))).isCloseTo(5, within(0.1));
        double soon = 0.01;
        assertThat(walk.varianceAt(soon) + 4 * walk.varianceAheadPerUnit(soon))
                .isCloseTo(1.5 * 4 * soon * soon, within(1e-5));
    }

    @Test
    void aSlowSeasonLastsALittleLonger() {
        double[] x = {0, 1, 2, 2.5};
        double[] y = {20, 16, 12, 11.2};
        var walk = SeasonWalk.along(x, y, 0.1, 4, 1.2, 1);
        assertThat(walk.levelAt(2.5) - walk.levelAt(2.75)).isLessThan(0.85);
        assertThat(walk.levelAt(6) - walk.levelAt(7)).isCloseTo(4, within(0.01));
    }

    @Test
    void theLevelIsLinearInTheRate() {
        double[] x = {0, 0.3, 1.1, 2.5};
        double[] y = {20, 18, 12, 11.2};
        double at0 = SeasonWalk.along(x, y, 0.5, 0, 1.2, 1).levelAt(4);
        double at3 = SeasonWalk.along(x, y, 0.5, 3, 1.2, 1).levelAt(4);
        double at6 = SeasonWalk.along(x, y, 0.5, 6, 1.2, 1).levelAt(4);
        assertThat(at3).isCloseTo((at0 + at6) / 2, within(1e-12));
    }
}

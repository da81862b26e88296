package org.ripewood.platform.meters;

/**
 * What the service tells of itself as it runs: how long and how often, never of whom. Names follow
 * the conventions of Prometheus; its unit and {@code _total} are put behind them.
 */
public enum Meter {
    TREE_JUDGED("ripewood.tree.judging", "Time in which one tree was judged by the engine"),
    BOARD_MADE("ripewood.course.board", "Time in which a course's board was made"),
    DAY_LAID_OUT("ripewood.class.day.layout", "Time in which a class day was laid out"),
    SIGN_IN_FAILED("ripewood.sign.in.failures", "Sign-ins with a wrong name or password"),
    REFUSED("ripewood.requests.refused", "Requests refused for the sake of safety"),
    PHOTO_STORED("ripewood.photos.stored", "Photos that were kept"),
    SIGN_OFFS_WAITING("ripewood.sign.offs.waiting", "Reported steps that wait for a sign-off");

    private final String title;
    private final String help;

    Meter(String title, String help) {
        this.title = title;
        this.help = help;
    }

    String title() {
        return title;
    }

    String help() {
        return help;
    }
}

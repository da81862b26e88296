package org.ripewood.web.stock;

import org.ripewood.web.kit.TextFormat;

/** What can be reckoned, each on a form of its own. */
public enum Calculation {
    CONTAINER("Container", "What a container holds"),
    MIX("Mix", "What it takes to fill it"),
    NEXT("Next container", "Which container comes next"),
    WIRE("Wire", "Wire for a branch"),
    FEED("Feed", "How much feed"),
    LIFT("Lifting", "Who lifts it");

    private final String tab;
    private final String title;

    Calculation(String tab, String title) {
        this.tab = tab;
        this.title = title;
    }

    public String word() {
        return TextFormat.small(this);
    }

    public String tab() {
        return tab;
    }

    public String title() {
        return title;
    }
}

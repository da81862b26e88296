package org.ripewood.pictures;

/** The house's colours, by the names of the style sheet's custom properties. */
enum Ink {
    INK("ink", "#221e18", "#000000"),
    SOFT("soft", "#5d564a", "#333333"),
    EDGE("edge", "#8b7f68", "#666666"),
    RULE("rule", "#d3c7ac", "#bbbbbb"),
    SHADE("shade", "#ece3cf", "#eeeeee"),
    SHEET("sheet", "#fffcf5", "#ffffff"),
    MOSS("moss", "#3d5c2c", "#000000"),
    MOSS_WASH("moss-wash", "#e6ecd8", "#f2f2f2"),
    OCHRE("ochre", "#85540a", "#000000"),
    OCHRE_WASH("ochre-wash", "#f7e8c8", "#f2f2f2"),
    SLATE("slate", "#37536f", "#222222"),
    SLATE_WASH("slate-wash", "#e0e8ee", "#f2f2f2");

    private final String property;
    private final String screen;
    private final String print;

    Ink(String property, String screen, String print) {
        this.property = property;
        this.screen = screen;
        this.print = print;
    }

    /**
     * As the value of a presentation attribute, since the pages allow no inline style; plain on
     * paper, as a print engine need not know custom properties.
     */
    String on(Sheet sheet) {
        return sheet.paper() ? print : "var(--%s, %s)".formatted(property, screen);
    }
}

package org.ripewood.pictures;

/**
 * A drawn picture: SVG text, and the same in words.
 *
 * <p>Only this room makes one, so {@link #svg} is always well-formed, holds no script, no style
 * element and no address, and all foreign text in it is escaped: it may be put raw into a page.
 */
public final class Picture {

    private final String title;
    private final String description;
    private final String svg;
    private final TextTable table;

    Picture(String title, String description, String svg, TextTable table) {
        this.title = title;
        this.description = description;
        this.svg = svg;
        this.table = table;
    }

    /** What is shown, in a few words; plain text. */
    public String title() {
        return title;
    }

    /** What can be read from it, in a sentence or two; plain text. */
    public String description() {
        return description;
    }

    /** The picture, safe to be put raw into a page or a file. */
    public String svg() {
        return svg;
    }

    /** The same as a table; plain text. */
    public TextTable table() {
        return table;
    }

    @Override
    public String toString() {
        return svg;
    }
}

package org.ripewood.photos;

/** From where a tree is seen; sides are told as seen by who stands before its marked front. */
public enum Viewpoint {
    FRONT("Front"),
    LEFT("Left"),
    BACK("Back"),
    RIGHT("Right"),
    ABOVE("Above"),
    DETAIL("Detail");

    private final String title;

    Viewpoint(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}

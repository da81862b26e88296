package org.ripewood.web.kit;

import java.util.function.Function;
import org.ripewood.pictures.Picture;
import org.ripewood.pictures.Sheet;
import org.ripewood.pictures.TextTable;

/**
 * A picture as a page holds it: drawn twice, since letters must not shrink with the screen; the
 * style shows one.
 */
public record PictureFormat(Picture narrow, Picture wide) {

    public static PictureFormat of(Function<Sheet, Picture> draw) {
        return new PictureFormat(draw.apply(Sheet.PHONE), draw.apply(Sheet.PAGE));
    }

    public TextTable table() {
        return wide.table();
    }
}

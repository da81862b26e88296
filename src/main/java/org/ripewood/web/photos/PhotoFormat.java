package org.ripewood.web.photos;

import io.quarkus.qute.TemplateExtension;
import org.ripewood.photos.Photo;
import org.ripewood.web.kit.TextFormat;

/** A photo in words, for those who do not see it and for lists. */
@TemplateExtension
final class PhotoFormat {

    private PhotoFormat() {}

    static String told(Photo photo) {
        var words = photo.view().title() + ", " + TextFormat.day(photo.takenOn());
        return photo.caption() == null ? words : words + ": " + photo.caption();
    }
}

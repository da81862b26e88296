package org.ripewood.web.photos;

import io.quarkus.qute.TemplateExtension;
import org.ripewood.photos.Photo;
import org.ripewood.web.kit.Shown;

/** A photo in words, for those who do not see it and for lists. */
@TemplateExtension
final class PhotoShown {

    private PhotoShown() {}

    static String told(Photo photo) {
        var words = photo.view().title() + ", " + Shown.day(photo.takenOn());
        return photo.caption() == null ? words : words + ": " + photo.caption();
    }
}

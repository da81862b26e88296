package org.ripewood.api.content;

import org.ripewood.course.Technique;

/** A technique in a list. */
record TechniqueLine(String code, String title, String stage, String summary) {

    static TechniqueLine of(Technique technique) {
        return new TechniqueLine(
                technique.code(), technique.title(), technique.stage(), technique.summary());
    }
}

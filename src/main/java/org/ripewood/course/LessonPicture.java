package org.ripewood.course;

import java.io.ByteArrayInputStream;
import java.io.InputStream;

/** A picture that stands in lessons; a file of the content, checked when it was read. */
public final class LessonPicture {

    /** What it is served as. */
    public enum Type {
        SVG("image/svg+xml"),
        PNG("image/png");

        private final String mediaType;

        Type(String mediaType) {
            this.mediaType = mediaType;
        }

        public String mediaType() {
            return mediaType;
        }
    }

    private final String name;
    private final Type type;
    private final byte[] bytes;

    LessonPicture(String name, Type type, byte[] bytes) {
        this.name = name;
        this.type = type;
        this.bytes = bytes.clone();
    }

    /** The file's name inside the folder of pictures. */
    public String name() {
        return name;
    }

    public Type type() {
        return type;
    }

    public InputStream open() {
        return new ByteArrayInputStream(bytes);
    }
}

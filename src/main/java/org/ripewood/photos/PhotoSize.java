package org.ripewood.photos;

/** Which of the two sizes kept. */
public enum PhotoSize {
    WHOLE,
    THUMBNAIL
}

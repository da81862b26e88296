package org.ripewood.photos;

import java.io.InputStream;

/**
 * A photo's JPEG, to be read once and closed.
 *
 * @param tag differs whenever the bytes do
 */
public record PhotoFile(String tag, InputStream stream) {}

package org.ripewood.photos;

import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.util.List;

/** Where the bytes of photos lie. Keys are made by {@link FileKeys} and never used again. */
interface PhotoStore {

    /** Keeps bytes for good: once this returns they survive a loss of power, or it throws. */
    void put(String key, byte[] bytes) throws IOException;

    /**
     * The bytes of a key.
     *
     * @throws java.nio.file.NoSuchFileException when there are none
     */
    InputStream open(String key) throws IOException;

    /** Takes bytes away; a key without bytes is let pass. */
    void remove(String key) throws IOException;

    /** Keys of bytes kept before a moment; what was left half-written before it is cleared away. */
    List<String> keptBefore(Instant moment) throws IOException;
}

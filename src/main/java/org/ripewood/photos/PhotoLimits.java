package org.ripewood.photos;

import io.quarkus.runtime.configuration.MemorySize;
import jakarta.enterprise.context.ApplicationScoped;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** How much is taken in. */
@ApplicationScoped
class PhotoLimits {

    private final long mostBytes;
    private final long mostPixels;
    private final int mostOfTree;
    private final int mostADay;

    PhotoLimits(
            @ConfigProperty(name = "ripewood.photos.most-bytes") MemorySize mostBytes,
            @ConfigProperty(name = "ripewood.photos.most-pixels") long mostPixels,
            @ConfigProperty(name = "ripewood.photos.most-of-tree") int mostOfTree,
            @ConfigProperty(name = "ripewood.photos.most-a-day") int mostADay) {
        this.mostBytes = mostBytes.asLongValue();
        this.mostPixels = mostPixels;
        this.mostOfTree = mostOfTree;
        this.mostADay = mostADay;
    }

    /** Of a file as it is sent. */
    long mostBytes() {
        return mostBytes;
    }

    /** Of a picture before it is made smaller. */
    long mostPixels() {
        return mostPixels;
    }

    int mostOfTree() {
        return mostOfTree;
    }

    /** That one person may send, those taken away since included. */
    int mostADay() {
        return mostADay;
    }
}

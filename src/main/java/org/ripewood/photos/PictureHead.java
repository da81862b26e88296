package org.ripewood.photos;

/**
 * What the first bytes of a picture say, read before anything is decoded.
 *
 * @param format name by which the decoder is found
 * @param channels colours a pixel is made of; 0 when the format's decoder takes all of them
 * @param bytesPerPixel in memory, once decoded
 */
record PictureHead(
        String format,
        int widthPx,
        int heightPx,
        int channels,
        int bytesPerPixel,
        CameraNotes notes) {

    long pixels() {
        return (long) widthPx * heightPx;
    }

    int longestPx() {
        return Math.max(widthPx, heightPx);
    }

    /**
     * Reads the head of a JPEG or PNG, whatever its name.
     *
     * @throws org.ripewood.platform.problems.Refused 400, with what it seems to be and what to do
     *     about it
     */
    static PictureHead of(byte[] sent) {
        if (JpegHead.begins(sent)) {
            return JpegHead.read(sent);
        }
        if (PngHead.begins(sent)) {
            return PngHead.read(sent);
        }
        throw OtherKind.of(sent);
    }
}

package org.ripewood.photos;

import java.awt.image.BufferedImage;

/** Turns a picture the way it was seen, by the camera's note (Exif 2.32, tag 274). */
final class ExifOrientation {

    private ExifOrientation() {}

    /**
     * @param picture of type RGB
     * @param orientation 1 to 8
     */
    static BufferedImage upright(BufferedImage picture, int orientation) {
        if (orientation == 1) {
            return picture;
        }
        int width = picture.getWidth();
        int height = picture.getHeight();
        boolean lies = orientation >= 5;
        var turned =
                new BufferedImage(
                        lies ? height : width, lies ? width : height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int right = width - 1 - x;
                int below = height - 1 - y;
                int rgb = picture.getRGB(x, y);
                switch (orientation) {
                    case 2 -> turned.setRGB(right, y, rgb);
                    case 3 -> turned.setRGB(right, below, rgb);
                    case 4 -> turned.setRGB(x, below, rgb);
                    case 5 -> turned.setRGB(y, x, rgb);
                    case 6 -> turned.setRGB(below, x, rgb);
                    case 7 -> turned.setRGB(below, right, rgb);
                    case 8 -> turned.setRGB(y, right, rgb);
                    default ->
                            throw new IllegalArgumentException(
                                    "expected an orientation from 1 to 8, found " + orientation);
                }
            }
        }
        return turned;
    }
}

// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.media;

import java.awt.geom.AffineTransform;
import java.awt.image.AffineTransformOp;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;

import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Turns the pixels of PNG and JPEG pictures. It needs the JDK's pictures and is loaded when first used. */
final class Turning {

    private static final long MOST_PIXELS = 100_000_000L;
    private static final float QUALITY = 0.93f;

    private Turning() {
    }

    /**
     * Sets a picture upright.
     *
     * @param bytes a PNG or JPEG file
     * @param type what it is
     * @param orientation 1 to 8 as Exif counts: 3 upside down, 6 to be turned right, 8 left, even and 5, 7 mirrored
     * @return the turned picture
     */
    static byte[] upright(byte[] bytes, MediaType type, int orientation) throws MediaException {
        try {
            return write(turn(read(bytes), orientation), type);
        } catch (IOException | RuntimeException e) {
            throw new MediaException("The picture cannot be turned here: turn it with another program and add it again", e);
        }
    }

    /** A picture of its own with plain colours, which can be drawn on. */
    static BufferedImage turn(BufferedImage image, int orientation) {
        var turned = new BufferedImage(orientation >= 5 ? image.getHeight() : image.getWidth(),
                orientation >= 5 ? image.getWidth() : image.getHeight(), plain(image));
        var operation = new AffineTransformOp(transform(orientation, image.getWidth(), image.getHeight()),
                AffineTransformOp.TYPE_NEAREST_NEIGHBOR);
        turned.createGraphics().drawImage(image, operation, 0, 0);
        return turned;
    }

    private static int plain(BufferedImage image) {
        return image.getColorModel().hasAlpha() ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB;
    }

    static BufferedImage read(byte[] bytes) throws IOException, MediaException {
        try (var input = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            var readers = ImageIO.getImageReaders(input);
            if (!readers.hasNext()) {
                throw new IOException("No reader for this picture");
            }
            var reader = readers.next();
            try {
                reader.setInput(input, true, true);
                if ((long) reader.getWidth(0) * reader.getHeight(0) > MOST_PIXELS) {
                    throw new MediaException("The picture has more than " + MOST_PIXELS / 1_000_000
                            + " million pixels: make it smaller and add it again");
                }
                return reader.read(0);
            } finally {
                reader.dispose();
            }
        }
    }

    /** Where a pixel of the stored picture goes, row by row of Exif 2.3, table of orientation; from memory. */
    private static AffineTransform transform(int orientation, int width, int height) {
        return switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
            default -> new AffineTransform();
        };
    }

    static byte[] write(BufferedImage image, MediaType type) throws IOException {
        var bytes = new ByteArrayOutputStream();
        var writer = ImageIO.getImageWritersByFormatName(type == MediaType.PNG ? "png" : "jpeg").next();
        try (var output = new MemoryCacheImageOutputStream(bytes)) {
            var how = writer.getDefaultWriteParam();
            if (type == MediaType.JPEG) {
                how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
                how.setCompressionQuality(QUALITY);
            }
            writer.setOutput(output);
            writer.write(null, new IIOImage(image, null, null), how);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}

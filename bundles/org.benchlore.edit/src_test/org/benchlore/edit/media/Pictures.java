// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.media;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

import javax.imageio.ImageIO;

/** Makes pictures with everything in them that should not stay. */
final class Pictures {

    /** Stands in every place where a camera or a program writes something. */
    static final String SECRET = "GPS-54.3N-10.1E";

    private Pictures() {
    }

    /** A picture of 32 by 16, dark but for a light quarter at the top left. */
    static BufferedImage image() {
        var image = new BufferedImage(32, 16, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 16; x++) {
            for (int y = 0; y < 8; y++) {
                image.setRGB(x, y, 0xffffff);
            }
        }
        return image;
    }

    static byte[] plain(String format) throws IOException {
        var bytes = new ByteArrayOutputStream();
        ImageIO.write(image(), format, bytes);
        return bytes.toByteArray();
    }

    static BufferedImage read(byte[] bytes) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(bytes));
    }

    static boolean isLight(BufferedImage image, int x, int y) {
        return (image.getRGB(x, y) & 0xff) > 0x80;
    }

    /** A JPEG with place, camera, comment, maker's segment, and words behind its end. */
    static byte[] jpeg(int orientation, ByteOrder order) throws IOException {
        var picture = plain("jpeg");
        var out = new ByteArrayOutputStream();
        out.write(picture, 0, 2);
        out.writeBytes(segment(0xe1, exif(orientation, order)));
        out.writeBytes(segment(0xe1, ("http://ns.adobe.com/xap/1.0/\0<x>" + SECRET + "</x>").getBytes()));
        out.writeBytes(segment(0xe2, ("MPF\0" + SECRET).getBytes()));
        out.writeBytes(segment(0xe5, SECRET.getBytes()));
        out.writeBytes(segment(0xed, ("Photoshop 3.0\0" + SECRET).getBytes()));
        out.writeBytes(segment(0xfe, SECRET.getBytes()));
        out.write(picture, 2, picture.length - 2);
        out.writeBytes(SECRET.getBytes());
        return out.toByteArray();
    }

    private static byte[] segment(int marker, byte[] content) {
        return ByteBuffer.allocate(content.length + 4).put((byte) 0xff).put((byte) marker)
                .putShort((short) (content.length + 2)).put(content).array();
    }

    private static byte[] exif(int orientation, ByteOrder order) {
        var tiff = ByteBuffer.allocate(8 + 2 + 24 + 4 + 20).order(order);
        tiff.put((order == ByteOrder.BIG_ENDIAN ? "MM" : "II").getBytes()).putShort((short) 42).putInt(8);
        tiff.putShort((short) 2);
        tiff.putShort((short) 0x0112).putShort((short) 3).putInt(1).putShort((short) orientation).putShort((short) 0);
        tiff.putShort((short) 0x8825).putShort((short) 4).putInt(1).putInt(38);
        tiff.putInt(0).put(SECRET.getBytes());
        var all = new ByteArrayOutputStream();
        all.writeBytes("Exif\0\0".getBytes());
        all.writeBytes(tiff.array());
        return all.toByteArray();
    }

    /** A PNG with texts, Exif, a time, and words behind its end. */
    static byte[] png() throws IOException {
        var picture = plain("png");
        int end = picture.length - 12;
        var out = new ByteArrayOutputStream();
        out.write(picture, 0, end);
        for (var type : new String[] {"tEXt", "iTXt", "zTXt", "eXIf", "tIME", "prVt"}) {
            out.writeBytes(chunk(type, SECRET.getBytes()));
        }
        out.write(picture, end, 12);
        out.writeBytes(SECRET.getBytes());
        return out.toByteArray();
    }

    private static byte[] chunk(String type, byte[] content) {
        var sum = new CRC32();
        sum.update(type.getBytes());
        sum.update(content);
        return ByteBuffer.allocate(content.length + 12).putInt(content.length).put(type.getBytes()).put(content)
                .putInt((int) sum.getValue()).array();
    }

    /** A GIF with a comment and a program's extension, and words behind its end. */
    static byte[] gif() throws IOException {
        var picture = plain("gif");
        var out = new ByteArrayOutputStream();
        out.write(picture, 0, picture.length - 1);
        out.writeBytes(new byte[] {0x21, (byte) 0xfe, (byte) SECRET.length()});
        out.writeBytes((SECRET + "\0").getBytes());
        out.writeBytes(new byte[] {0x21, (byte) 0xff, 11});
        out.writeBytes("XMP DataXMP".getBytes());
        out.write(SECRET.length());
        out.writeBytes((SECRET + "\0").getBytes());
        out.write(0x3b);
        out.writeBytes(SECRET.getBytes());
        return out.toByteArray();
    }

    /** The frame of an extended WebP file; nothing here draws it, so its picture data is made up. */
    static byte[] webp() {
        var body = new ByteArrayOutputStream();
        body.writeBytes(riff("VP8X", new byte[] {0x0c, 0, 0, 0, 31, 0, 0, 15, 0, 0}));
        body.writeBytes(riff("VP8L", new byte[] {0x2f, 1, 2, 3, 4}));
        body.writeBytes(riff("EXIF", SECRET.getBytes()));
        body.writeBytes(riff("XMP ", SECRET.getBytes()));
        var all = ByteBuffer.allocate(12 + body.size()).order(ByteOrder.LITTLE_ENDIAN).put("RIFF".getBytes())
                .putInt(4 + body.size()).put("WEBP".getBytes()).put(body.toByteArray());
        return all.array();
    }

    private static byte[] riff(String type, byte[] content) {
        return ByteBuffer.allocate(8 + content.length + content.length % 2).order(ByteOrder.LITTLE_ENDIAN)
                .put(type.getBytes()).putInt(content.length).put(content).array();
    }

    static boolean holdsSecret(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1).contains(SECRET);
    }
}

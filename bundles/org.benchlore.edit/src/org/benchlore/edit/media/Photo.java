// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.media;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Image;
import java.awt.Polygon;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Optional;
import java.util.Set;

/**
 * A picture on its way into a note: cleaned, perhaps turned, perhaps with an arrow. The arrow becomes pixels when it is
 * taken in, since paper, packs and every other program show pixels; until then it can be changed. Never changes itself.
 */
public final class Photo {

    /** The arrow's colour on every picture, as red, green, blue; its edge is white. */
    public static final int ARROW_COLOUR = 0xd81e05;

    private static final Set<MediaType> PIXELS = Set.of(MediaType.PNG, MediaType.JPEG);
    private static final int[] TURNS = {1, 6, 3, 8};

    private final byte[] clean;
    private final MediaType type;
    private final int quarters;
    private final Optional<Arrow> arrow;

    private Photo(byte[] clean, MediaType type, int quarters, Optional<Arrow> arrow) {
        this.clean = clean;
        this.type = type;
        this.quarters = quarters;
        this.arrow = arrow;
    }

    /**
     * Looks at a file and cleans it.
     *
     * @param bytes the content of a file
     * @return the picture, without place, time, comments and scripts
     * @throws MediaException if it is no picture, drawing or PDF, is too large or is damaged
     */
    public static Photo of(byte[] bytes) throws MediaException {
        var clean = MediaShelf.clean(bytes);
        return new Photo(clean, MediaType.of(clean).orElseThrow(), 0, Optional.empty());
    }

    /**
     * Returns what it is.
     *
     * @return the type of the file
     */
    public MediaType type() {
        return type;
    }

    /**
     * Tells whether it can be turned and take an arrow.
     *
     * @return true for PNG and JPEG
     */
    public boolean canBeDrawnOn() {
        return PIXELS.contains(type);
    }

    /**
     * Returns the arrow.
     *
     * @return the arrow on the picture as it is turned now, or empty
     */
    public Optional<Arrow> arrow() {
        return arrow;
    }

    /**
     * Turns it a quarter to the right, with its arrow.
     *
     * @return the turned picture
     */
    public Photo turned() {
        return new Photo(clean, type, (quarters + 1) % TURNS.length, arrow.map(Arrow::turned));
    }

    /**
     * Puts an arrow on it in place of the one before, or takes it off.
     *
     * @param next the arrow, or empty
     * @return the picture after that
     */
    public Photo pointed(Optional<Arrow> next) {
        return new Photo(clean, type, quarters, next);
    }

    /**
     * Returns the picture turned, without its arrow.
     *
     * @return the content of a file
     * @throws MediaException if it cannot be drawn
     */
    public byte[] upright() throws MediaException {
        return pointed(Optional.empty()).drawn();
    }

    /**
     * Returns the picture as it is taken in.
     *
     * @return the content of a file
     * @throws MediaException if it cannot be drawn
     */
    public byte[] drawn() throws MediaException {
        if (!canBeDrawnOn() || quarters == 0 && arrow.isEmpty()) {
            return clean;
        }
        try {
            var image = Turning.turn(Turning.read(clean), TURNS[quarters]);
            arrow.ifPresent(one -> draw(image, one));
            return Turning.write(image, type);
        } catch (IOException | RuntimeException e) {
            throw new MediaException("The picture cannot be drawn on here: use it as it is, or mark it with another program"
                    + " and add it again", e);
        }
    }

    /**
     * Makes a small picture for showing, turned and with its arrow.
     *
     * @param width greatest width in pixels
     * @param height greatest height in pixels
     * @param withArrow false to leave the arrow out
     * @return the content of a PNG file, or the cleaned file as it is where it cannot be drawn on
     * @throws MediaException if it cannot be drawn
     */
    public byte[] small(int width, int height, boolean withArrow) throws MediaException {
        if (!canBeDrawnOn()) {
            return clean;
        }
        try {
            var image = Turning.turn(Turning.read(clean), TURNS[quarters]);
            arrow.filter(one -> withArrow).ifPresent(one -> draw(image, one));
            return Turning.write(shrunk(image, width, height), MediaType.PNG);
        } catch (IOException | RuntimeException e) {
            throw new MediaException("The picture cannot be read: use another one", e);
        }
    }

    private static BufferedImage shrunk(BufferedImage image, int width, int height) {
        double scale = Math.min(1, Math.min((double) width / image.getWidth(), (double) height / image.getHeight()));
        int wide = Math.max(1, (int) (image.getWidth() * scale));
        int high = Math.max(1, (int) (image.getHeight() * scale));
        var small = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
        small.createGraphics().drawImage(image.getScaledInstance(wide, high, Image.SCALE_AREA_AVERAGING), 0, 0, null);
        return small;
    }

    private static void draw(BufferedImage image, Arrow arrow) {
        var points = arrow.outline(image.getWidth(), image.getHeight());
        var shape = new Polygon();
        for (int i = 0; i < points.length; i += 2) {
            shape.addPoint(points[i], points[i + 1]);
        }
        var graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setColor(Color.WHITE);
        graphics.setStroke(new BasicStroke(Math.max(2, Math.min(image.getWidth(), image.getHeight()) / 150f)));
        graphics.draw(shape);
        graphics.setColor(new Color(ARROW_COLOUR));
        graphics.fill(shape);
        graphics.dispose();
    }
}

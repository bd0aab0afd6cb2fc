// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

import org.benchlore.ui.Ids;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;

/** Drives the window as a person would: finds widgets by id, presses keys, waits for what comes of it. */
final class WindowDriver {

    private static final long PATIENCE_MILLIS = 20_000;
    private static final int PAUSE_MILLIS = 10;

    private final Display display = Display.getCurrent();

    Shell shell() {
        return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
    }

    /** Brings the window to the front, so that keys reach it. */
    void activate() {
        shell().forceActive();
        waitUntil("the window is active", () -> display.getActiveShell() == shell());
    }

    /** Closes what a failed test left open over the window, so that the next one finds it free. */
    void closeDialogs() {
        for (var one : display.getShells()) {
            if (!one.isDisposed() && one.isVisible() && one != shell()) {
                one.close();
            }
        }
    }

    /** Returns the widget with an id, in the window or a dialog; waits for it to appear. */
    <T extends Control> T find(String id, Class<T> type) {
        waitUntil("there is a widget '" + id + "'", () -> !all(id, type).isEmpty());
        return all(id, type).get(0);
    }

    boolean has(String id) {
        return !all(id, Control.class).isEmpty();
    }

    private <T extends Control> List<T> all(String id, Class<T> type) {
        var found = new ArrayList<T>();
        for (var one : display.getShells()) {
            if (one.isVisible()) {
                found.addAll(all(one, id, type));
            }
        }
        return found;
    }

    private static <T extends Control> List<T> all(Composite parent, String id, Class<T> type) {
        var found = new ArrayList<T>();
        for (var child : parent.getChildren()) {
            if (type.isInstance(child) && id.equals(child.getData(Ids.WIDGET_ID)) && child.isVisible()) {
                found.add(type.cast(child));
            }
            if (child instanceof Composite composite) {
                found.addAll(all(composite, id, type));
            }
        }
        return found;
    }

    /** Lets the window work until something holds. */
    void waitUntil(String what, BooleanSupplier condition) {
        long end = System.currentTimeMillis() + PATIENCE_MILLIS;
        while (!condition.getAsBoolean()) {
            if (System.currentTimeMillis() > end) {
                screenshot("timed-out");
                fail("Waited in vain until " + what);
            }
            if (!display.readAndDispatch()) {
                pause();
            }
        }
    }

    /** Lets the window work until something is there and returns it. */
    <T> T await(String what, Supplier<T> source) {
        waitUntil(what, () -> source.get() != null);
        return source.get();
    }

    /** Lets the window work for a while, to see that nothing comes of something. */
    void workFor(long millis) {
        long end = System.currentTimeMillis() + millis;
        while (System.currentTimeMillis() < end) {
            if (!display.readAndDispatch()) {
                pause();
            }
        }
    }

    private static void pause() {
        try {
            Thread.sleep(PAUSE_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Puts the cursor into a control. */
    void focus(Control control) {
        activate();
        control.forceFocus();
        waitUntil("the cursor is in " + control, control::isFocusControl);
    }

    /** Puts the cursor into a control of a dialog. */
    void focus(Control control, Shell dialog) {
        dialog.forceActive();
        control.forceFocus();
        waitUntil("the cursor is in " + control, control::isFocusControl);
    }

    /** Presses and releases a key as the keyboard does, perhaps with others held down. */
    void press(int key, int... held) {
        for (int one : held) {
            post(SWT.KeyDown, one, (char) 0);
        }
        post(SWT.KeyDown, key, (char) 0);
        post(SWT.KeyUp, key, (char) 0);
        for (int i = held.length - 1; i >= 0; i--) {
            post(SWT.KeyUp, held[i], (char) 0);
        }
        workFor(150);
    }

    /** Presses a letter with others held down. */
    void pressLetter(char letter, int... held) {
        for (int one : held) {
            post(SWT.KeyDown, one, (char) 0);
        }
        post(SWT.KeyDown, 0, letter);
        post(SWT.KeyUp, 0, letter);
        for (int i = held.length - 1; i >= 0; i--) {
            post(SWT.KeyUp, held[i], (char) 0);
        }
        workFor(150);
    }

    /** Types lower-case letters, digits and spaces on the keyboard. */
    void type(String text) {
        for (char letter : text.toCharArray()) {
            post(SWT.KeyDown, 0, letter);
            post(SWT.KeyUp, 0, letter);
            workFor(5);
        }
    }

    private void post(int type, int key, char letter) {
        var event = new Event();
        event.type = type;
        event.keyCode = key;
        event.character = letter;
        if (!display.post(event)) {
            fail("The display does not take a key: is a window manager running?");
        }
    }

    /** Keeps a picture of the window for people to look at. */
    void screenshot(String name) {
        workFor(400);
        var size = shell().getSize();
        var image = new Image(display, size.x, size.y);
        var gc = new GC(display);
        gc.copyArea(image, shell().getLocation().x, shell().getLocation().y);
        gc.dispose();
        save(image.getImageData(), name);
        image.dispose();
    }

    private static void save(ImageData data, String name) {
        try {
            var folder = Files.createDirectories(Path.of("target", "screenshots"));
            var loader = new ImageLoader();
            loader.data = new ImageData[] {data};
            loader.save(folder.resolve(name + ".png").toString(), SWT.IMAGE_PNG);
        } catch (java.io.IOException e) {
            fail("The picture cannot be kept", e);
        }
    }
}

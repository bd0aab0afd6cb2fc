// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.note;

import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.widgets.Control;

/** Takes pictures from the clipboard and from files dropped on a control. */
final class Pasting {

    private final Control owner;
    private final PhotoStrip photos;

    Pasting(Control owner, PhotoStrip photos) {
        this.owner = owner;
        this.photos = photos;
    }

    /** Pastes a picture or picture files; false if the clipboard holds neither. */
    boolean paste() {
        var clipboard = new Clipboard(owner.getDisplay());
        try {
            return take(clipboard.getContents(FileTransfer.getInstance()))
                    || take(clipboard.getContents(ImageTransfer.getInstance()));
        } finally {
            clipboard.dispose();
        }
    }

    boolean holdsText() {
        var clipboard = new Clipboard(owner.getDisplay());
        try {
            return Optional.ofNullable(clipboard.getContents(TextTransfer.getInstance()))
                    .filter(text -> !((String) text).isEmpty()).isPresent();
        } finally {
            clipboard.dispose();
        }
    }

    private boolean take(Object content) {
        if (content instanceof String[] files) {
            for (var file : files) {
                photos.take(Path.of(file));
            }
            return files.length > 0;
        }
        if (content instanceof ImageData data) {
            photos.take(png(data));
            return true;
        }
        return false;
    }

    private static byte[] png(ImageData data) {
        var loader = new ImageLoader();
        loader.data = new ImageData[] {data};
        var bytes = new ByteArrayOutputStream();
        loader.save(bytes, SWT.IMAGE_PNG);
        return bytes.toByteArray();
    }

    void takeDrops() {
        var target = new DropTarget(owner, DND.DROP_COPY | DND.DROP_DEFAULT | DND.DROP_LINK | DND.DROP_MOVE);
        target.setTransfer(new Transfer[] {FileTransfer.getInstance(), ImageTransfer.getInstance()});
        target.addDropListener(new DropTargetAdapter() {
            @Override
            public void dragEnter(DropTargetEvent event) {
                event.detail = DND.DROP_COPY;
            }

            @Override
            public void drop(DropTargetEvent event) {
                take(event.data);
            }
        });
    }
}

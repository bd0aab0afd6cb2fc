// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.look;

import java.util.Locale;

import org.benchlore.model.Kind;
import org.benchlore.ui.Ids;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Control;

/** Icons for one control, given back when the control is disposed of. */
public final class Icons {

    private final LocalResourceManager resources;

    /**
     * Makes icons.
     *
     * @param owner lives as long as the icons
     */
    public Icons(Control owner) {
        this.resources = new LocalResourceManager(JFaceResources.getResources(), owner);
    }

    /**
     * Returns the icon of a kind.
     *
     * @param kind a kind
     * @return an image of 16 by 16 points
     */
    public Image of(Kind kind) {
        return named(kind.name().toLowerCase(Locale.ROOT));
    }

    /**
     * Returns an icon by name.
     *
     * @param name name of a file in the folder icons, without ending
     * @return an image of 16 by 16 points
     */
    public Image named(String name) {
        return resources.create(descriptor(name));
    }

    /**
     * Returns an icon's descriptor.
     *
     * @param name name of a file in the folder icons, without ending
     * @return the descriptor; a red square where there is no such file
     */
    public static ImageDescriptor descriptor(String name) {
        return ResourceLocator.imageDescriptorFromBundle(Ids.BUNDLE, "icons/" + name + ".svg")
                .orElseGet(ImageDescriptor::getMissingImageDescriptor);
    }
}

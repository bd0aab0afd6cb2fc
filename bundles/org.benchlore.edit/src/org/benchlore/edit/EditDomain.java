// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.provider.ComposedAdapterFactory;

/** The editing domain of one session. It has no providers: commands are made directly, labels are our own. */
final class EditDomain extends AdapterFactoryEditingDomain {

    EditDomain(BasicCommandStack stack) {
        super(new ComposedAdapterFactory(), stack);
    }

    /** Whether a file may be saved over is the library's decision, not one of file permissions. */
    @Override
    public boolean isReadOnly(Resource resource) {
        return false;
    }
}

// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.util.Map;

import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.XMIException;
import org.eclipse.emf.ecore.xmi.XMLHelper;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.SAXXMIHandler;
import org.eclipse.emf.ecore.xmi.impl.XMILoadImpl;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Loads a file and reports everything that a later save would silently drop: comments, processing instructions and
 * schema locations, beside what EMF reports itself.
 */
final class BookLoad extends XMILoadImpl {

    BookLoad(XMLHelper helper) {
        super(helper);
    }

    @Override
    protected DefaultHandler makeDefaultHandler() {
        return new Handler(resource, helper, options);
    }

    /** Listens for what EMF passes over. */
    private static final class Handler extends SAXXMIHandler {

        Handler(XMLResource resource, XMLHelper helper, Map<?, ?> options) {
            super(resource, helper, options);
        }

        @Override
        public void comment(char[] text, int start, int length) {
            problem("a comment, which saving would drop: put the text into the element itself");
        }

        @Override
        public void processingInstruction(String target, String data) {
            problem("a processing instruction, which saving would drop: remove it");
        }

        @Override
        public void startDTD(String name, String publicId, String systemId) {
            problem("a document type definition, which is refused: remove it");
        }

        @Override
        protected void handleXSISchemaLocation(String location) {
            problem("a schema location, which is refused: remove it");
        }

        @Override
        protected void handleXSINoNamespaceSchemaLocation(String location) {
            problem("a schema location, which is refused: remove it");
        }

        private void problem(String what) {
            var line = locator == null ? 0 : locator.getLineNumber();
            Resource.Diagnostic diagnostic = new XMIException("the file has " + what,
                    xmlResource.getURI().toString(), line, 0);
            xmlResource.getErrors().add(diagnostic);
        }
    }
}

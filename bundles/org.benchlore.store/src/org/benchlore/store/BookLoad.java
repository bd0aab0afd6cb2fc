// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.XMIException;
import org.eclipse.emf.ecore.xmi.XMIResource;
import org.eclipse.emf.ecore.xmi.XMLHelper;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.SAXXMIHandler;
import org.eclipse.emf.ecore.xmi.impl.XMILoadImpl;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Loads a file and reports everything that a later save would silently drop: comments, processing instructions, schema
 * locations, stray words, foreign identities and values given twice, beside what EMF reports itself.
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

        private static final Set<String> KNOWN = Set.of("version", "type");

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

        @Override
        public void startElement(String uri, String localName, String name, Attributes attributes)
                throws SAXException {
            for (int i = 0; i < attributes.getLength(); i++) {
                if (XMIResource.XMI_URI.equals(attributes.getURI(i)) && !KNOWN.contains(attributes.getLocalName(i))) {
                    problem("'" + attributes.getQName(i) + "', which saving would drop: use the attribute id");
                }
            }
            super.startElement(uri, localName, name, attributes);
        }

        @Override
        public void characters(char[] letters, int start, int length) {
            if (text == null && !new String(letters, start, length).isBlank()) {
                problem("words between its elements, which saving would drop: put them into an element");
            }
            super.characters(letters, start, length);
        }

        @Override
        protected void setFeatureValue(EObject object, EStructuralFeature feature, Object value, int position) {
            if (!feature.isMany() && object.eIsSet(feature)) {
                problem("'" + feature.getName() + "' twice in one element, of which saving would drop one: remove one");
            }
            super.setFeatureValue(object, feature, value, position);
        }

        private void problem(String what) {
            var line = locator == null ? 0 : locator.getLineNumber();
            Resource.Diagnostic diagnostic = new XMIException("the file has " + what,
                    xmlResource.getURI().toString(), line, 0);
            xmlResource.getErrors().add(diagnostic);
        }
    }
}

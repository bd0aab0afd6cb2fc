// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertFalse;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.junit.jupiter.api.Test;

class WelcomeTest {

    private final WindowDriver window = new WindowDriver();

    @Test
    void pageShowsWhileNoLibraryIsOpen() throws Exception {
        LibraryCopy.open(window).close();
        window.waitUntil("the page is there", () -> window.has("welcome.demonstration"));
        window.screenshot("welcome");
    }

    @Test
    void enterOnTheFirstButtonOpensTheDemonstrationLibrary() throws Exception {
        LibraryCopy.open(window).close();
        window.focus(window.find("welcome.demonstration", Button.class));
        window.press(SWT.CR);
        window.waitUntil("the library is open", () -> LibraryCopy.session().current().isPresent());
        window.workFor(200);
        assertFalse(window.has("welcome.demonstration"));
        LibraryCopy.session().close();
        window.waitUntil("the library is closed", () -> window.has("welcome.demonstration"));
    }

    @Test
    void tabReachesTheOtherWaysToALibrary() throws Exception {
        LibraryCopy.open(window).close();
        window.focus(window.find("welcome.demonstration", Button.class));
        window.press(SWT.TAB);
        window.waitUntil("the next button has the cursor", window.find("welcome.open", Button.class)::isFocusControl);
        window.press(SWT.TAB);
        window.waitUntil("the third button has the cursor", window.find("welcome.new", Button.class)::isFocusControl);
    }
}

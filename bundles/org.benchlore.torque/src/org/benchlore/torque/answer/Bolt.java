// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.answer;

import org.benchlore.torque.PropertyClass;
import org.benchlore.torque.Strength;
import org.benchlore.torque.ThreadDesignation;

/** A thread and a class as two inputs give them. */
record Bolt(ThreadDesignation thread, PropertyClass propertyClass) {

    /** Reads both; the class may stand beside the thread instead, but not differ from it. */
    static Bolt read(String threadWord, String classWord) {
        var thread = WrongInput.at(Field.THREAD, () -> ThreadDesignation.parse(threadWord));
        var propertyClass = WrongInput.isBlank(classWord) ? beside(thread)
                : WrongInput.at(Field.CLASS, () -> PropertyClass.parse(classWord));
        if (thread.propertyClass().filter(written -> !written.equals(propertyClass)).isPresent()) {
            throw new WrongInput(Field.CLASS, "'" + thread + "' says " + thread.propertyClass().get()
                    + ", but the class given is " + propertyClass + ": leave one of them out.");
        }
        WrongInput.at(Field.CLASS, () -> Strength.of(propertyClass, thread.thread()));
        return new Bolt(thread, propertyClass);
    }

    private static PropertyClass beside(ThreadDesignation thread) {
        return thread.propertyClass().orElseThrow(() -> new WrongInput(Field.CLASS, "No class is given for "
                + thread.thread() + ": write for example "
                + (thread.thread().series().isInch() ? "'grade 5'." : "8.8.")));
    }

    void write(AnswerWriter writer) {
        var series = thread.thread().series();
        writer.headline(this + " (" + series.words() + ", " + series.standard() + "; "
                + propertyClass.family().standard() + ")");
        writer.add("thread", thread.thread().designation());
        writer.add("class", propertyClass.toString());
        writer.add("leftHanded", thread.leftHanded());
    }

    @Override
    public String toString() {
        return thread.thread() + (thread.leftHanded() ? " left-hand" : "") + ", " + propertyClass;
    }
}

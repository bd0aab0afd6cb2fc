// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.torque;

import org.eclipse.osgi.util.NLS;

/** Words of this package. */
final class Messages extends NLS {

    public static String adapterAngle;
    public static String adapterAngleHint;
    public static String angles;
    public static String anglesHint;
    public static String bearing;
    public static String bearingHint;
    public static String bolt;
    public static String boltWhat;
    public static String circle;
    public static String convert;
    public static String convertWhat;
    public static String finalTorque;
    public static String friction;
    public static String frictionHint;
    public static String fromPage;
    public static String grid;
    public static String headFriction;
    public static String headFrictionHint;
    public static String judge;
    public static String judgeWhat;
    public static String layout;
    public static String length;
    public static String lengthHint;
    public static String offset;
    public static String offsetHint;
    public static String own;
    public static String propertyClass;
    public static String readingWrenches;
    public static String sequence;
    public static String sequenceWhat;
    public static String size;
    public static String sizeHint;
    public static String stages;
    public static String takeIn;
    public static String thread;
    public static String toUnit;
    public static String torque;
    public static String use;
    public static String wrench;
    public static String wrenchWhat;

    static {
        NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
    }

    private Messages() {
    }
}

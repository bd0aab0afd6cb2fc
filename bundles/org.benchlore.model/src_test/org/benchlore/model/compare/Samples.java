// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

import org.benchlore.measure.Dimension;
import org.benchlore.measure.Quantity;
import org.benchlore.model.BookFactory;
import org.benchlore.model.Fastening;
import org.benchlore.model.Part;
import org.benchlore.model.Procedure;
import org.benchlore.model.Stage;
import org.benchlore.model.StageKind;
import org.benchlore.model.Step;
import org.benchlore.model.Work;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Small elements for the tests of comparing and merging; everything in them is invented. */
final class Samples {

    private Samples() {
    }

    /** A procedure of one way with three steps; the last has a drain plug tightened in one stage. */
    static Procedure procedure() {
        var procedure = BookFactory.eINSTANCE.createProcedure();
        procedure.setId("renew-oil");
        procedure.setTitle("Renew the oil");
        var way = BookFactory.eINSTANCE.createWay();
        way.setId("way");
        var work = BookFactory.eINSTANCE.createWork();
        work.setId("work");
        way.setWork(work);
        procedure.getWays().add(way);
        for (var name : new String[] {"a", "b", "c"}) {
            work.getSteps().add(step(name));
        }
        work.getSteps().get(2).getFastenings().add(drainPlug());
        return procedure;
    }

    static Step step(String name) {
        var step = BookFactory.eINSTANCE.createStep();
        step.setId("step-" + name);
        step.setText("Do " + name);
        return step;
    }

    private static Fastening drainPlug() {
        var plug = BookFactory.eINSTANCE.createFastening();
        plug.setId("plug");
        plug.setPlace("drain plug");
        plug.getStages().add(stage("45 N·m"));
        return plug;
    }

    static Stage stage(String torque) {
        var stage = BookFactory.eINSTANCE.createStage();
        stage.setKind(StageKind.TORQUE);
        stage.setTorque(torque(torque));
        return stage;
    }

    static Quantity torque(String text) {
        return Quantity.parse(text, Dimension.TORQUE);
    }

    static Work work(Procedure procedure) {
        return procedure.getWays().get(0).getWork();
    }

    static Step step(Procedure procedure, int number) {
        return work(procedure).getSteps().get(number - 1);
    }

    static Fastening plug(Procedure procedure) {
        return step(procedure, 3).getFastenings().get(0);
    }

    static Part part(String id) {
        var part = BookFactory.eINSTANCE.createPart();
        ((InternalEObject) part).eSetProxyURI(URI.createURI("library:/parts/" + id + ".xmi#" + id));
        return part;
    }

    static <T extends EObject> T copy(T object) {
        var copier = new EcoreUtil.Copier(false, true);
        @SuppressWarnings("unchecked")
        var copy = (T) copier.copy(object);
        copier.copyReferences();
        return copy;
    }
}

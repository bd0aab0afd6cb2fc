// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.job;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.DemoCopy;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.References;
import org.benchlore.edit.Sessions;
import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Kind;
import org.benchlore.model.Round;
import org.benchlore.model.RoundKind;
import org.benchlore.model.Unit;

/** A new job on lorry 21 of the demonstration library, with one round; invented like the rest of it. */
final class JobFixture implements AutoCloseable {

    static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    static final Address MACHINE = new Address("machines/dravholm-hl26.xmi", "dravholm-hl26");
    static final Address PACK = new Address("procedures/renew-pto-clutch-pack.xmi", "renew-pto-clutch-pack");
    static final Address JORY = new Address("shop.xmi", "jory-pask");
    static final Address ODA = new Address("shop.xmi", "oda-brekkan");

    final Sessions sessions;
    final EditSession session;
    final JobRecord job;
    final Round round;

    JobFixture(Path folder) throws Exception {
        sessions = new DemoCopy(folder).sessions();
        session = sessions.create(Kind.JOB, "Pack of lorry 21", DAY.getYear());
        job = (JobRecord) session.element();
        job.setOpened(DAY);
        job.setUnit((Unit) References.to(Literals.UNIT, new Address("units/lorry-21.xmi", "lorry-21")));
        var adding = new JobEdits(session).nextRound(RoundKind.STRIP, DAY, List.of(PACK), "");
        session.execute(adding.edit());
        round = (Round) adding.element();
    }

    static Address inMachine(String id) {
        return new Address(MACHINE.path(), id);
    }

    Recorded recorded() {
        return new Recorded(session.library());
    }

    Optional<Address> to(org.eclipse.emf.ecore.EObject reference) {
        return session.library().addressOf(reference);
    }

    @Override
    public void close() {
        session.close();
        sessions.library().close();
    }
}

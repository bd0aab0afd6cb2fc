// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.benchlore.model.Address;
import org.benchlore.store.KindFacts.JobFacts;
import org.benchlore.store.KindFacts.Left;
import org.benchlore.store.KindFacts.Life;
import org.benchlore.store.KindFacts.MachineFacts;
import org.benchlore.store.KindFacts.NoteFacts;
import org.benchlore.store.KindFacts.PartFacts;
import org.benchlore.store.KindFacts.Renewal;
import org.benchlore.store.KindFacts.Sighting;
import org.benchlore.store.KindFacts.Tally;
import org.benchlore.store.KindFacts.UnitFacts;

/** How the facts of one kind stand in the kept catalogue. */
final class PackedFacts {

    private enum Form { JOB, NOTE, MACHINE, PART, UNIT }

    /** One line of a table. */
    private record Line(String key, List<Address> values) {
    }

    private PackedFacts() {
    }

    static void write(DataOutputStream out, KindFacts facts) throws IOException {
        if (facts instanceof JobFacts job) {
            out.writeByte(Form.JOB.ordinal());
            writeJob(out, job);
        } else if (facts instanceof NoteFacts note) {
            out.writeByte(Form.NOTE.ordinal());
            writeNote(out, note);
        } else if (facts instanceof MachineFacts machine) {
            out.writeByte(Form.MACHINE.ordinal());
            writeMachine(out, machine);
        } else if (facts instanceof PartFacts part) {
            out.writeByte(Form.PART.ordinal());
            maybe(out, part.supersededBy());
            Packed.writeAll(out, part.life().stream().toList(), PackedFacts::writeLife);
        } else if (facts instanceof UnitFacts unit) {
            out.writeByte(Form.UNIT.ordinal());
            out.writeInt(unit.keptUntil());
        }
    }

    static KindFacts read(DataInputStream in) throws IOException {
        int form = in.readUnsignedByte();
        if (form >= Form.values().length) {
            throw new IOException("No facts have the form " + form);
        }
        return switch (Form.values()[form]) {
            case JOB -> readJob(in);
            case NOTE -> new NoteFacts(maybe(in), maybe(in), maybe(in), first(in, PackedFacts::readTally));
            case MACHINE -> readMachine(in);
            case PART -> new PartFacts(maybe(in), first(in, PackedFacts::readLife));
            case UNIT -> new UnitFacts(in.readInt());
        };
    }

    private static void writeJob(DataOutputStream out, JobFacts job) throws IOException {
        maybe(out, job.unit());
        Packed.writeAll(out, job.done(), Packed::address);
        Packed.writeAll(out, job.renewals(), PackedFacts::writeRenewal);
        Packed.writeAll(out, job.leftIn(), PackedFacts::writeLeft);
        Packed.writeAll(out, job.failed(), Packed::address);
        Packed.text(out, job.meter());
        Packed.text(out, job.closed().map(LocalDate::toString).orElse(""));
        maybe(out, job.comebackOf());
        Packed.text(out, job.comebackReason());
    }

    private static JobFacts readJob(DataInputStream in) throws IOException {
        return new JobFacts(maybe(in), Packed.readAll(in, Packed::address),
                Packed.readAll(in, PackedFacts::readRenewal), Packed.readAll(in, PackedFacts::readLeft),
                Packed.readAll(in, Packed::address), Packed.text(in), day(in), maybe(in),
                Packed.text(in));
    }

    private static void writeRenewal(DataOutputStream out, Renewal renewal) throws IOException {
        Packed.address(out, renewal.component());
        Packed.writeAll(out, renewal.fitted(), Packed::address);
        out.writeBoolean(renewal.again());
    }

    private static Renewal readRenewal(DataInputStream in) throws IOException {
        return new Renewal(Packed.address(in), Packed.readAll(in, Packed::address), in.readBoolean());
    }

    private static void writeLeft(DataOutputStream out, Left left) throws IOException {
        Packed.address(out, left.component());
        maybe(out, left.part());
        out.writeBoolean(left.confirmed());
    }

    private static Left readLeft(DataInputStream in) throws IOException {
        return new Left(Packed.address(in), maybe(in), in.readBoolean());
    }

    private static void writeNote(DataOutputStream out, NoteFacts note) throws IOException {
        maybe(out, note.unit());
        maybe(out, note.component());
        maybe(out, note.job());
        Packed.writeAll(out, note.tally().stream().toList(), PackedFacts::writeTally);
    }

    private static void writeTally(DataOutputStream out, Tally tally) throws IOException {
        out.writeInt(tally.count());
        out.writeInt(tally.ofAbout());
        out.writeInt(tally.since());
        Packed.writeAll(out, tally.sightings(), PackedFacts::writeSighting);
    }

    private static Tally readTally(DataInputStream in) throws IOException {
        return new Tally(in.readInt(), in.readInt(), in.readInt(),
                Packed.readAll(in, PackedFacts::readSighting));
    }

    private static void writeSighting(DataOutputStream out, Sighting sighting) throws IOException {
        maybe(out, sighting.unit());
        Packed.text(out, sighting.date().map(LocalDate::toString).orElse(""));
    }

    private static Sighting readSighting(DataInputStream in) throws IOException {
        return new Sighting(maybe(in), day(in));
    }

    private static Optional<LocalDate> day(DataInputStream in) throws IOException {
        return Optional.of(Packed.text(in)).filter(day -> !day.isEmpty()).map(LocalDate::parse);
    }

    private static void writeMachine(DataOutputStream out, MachineFacts machine) throws IOException {
        Packed.text(out, machine.family());
        var causes = new TreeMap<>(machine.causes());
        Packed.writeAll(out, causes.keySet(), Packed::text);
        Packed.writeAll(out, causes.values(), Packed::text);
        var parts = new TreeMap<>(machine.parts()).entrySet().stream()
                .map(entry -> new Line(entry.getKey(), entry.getValue())).toList();
        Packed.writeAll(out, parts, PackedFacts::writeLine);
    }

    private static MachineFacts readMachine(DataInputStream in) throws IOException {
        var family = Packed.text(in);
        var keys = Packed.readAll(in, Packed::text);
        var values = Packed.readAll(in, Packed::text);
        var causes = new TreeMap<String, String>();
        for (int i = 0; i < keys.size(); i++) {
            causes.put(keys.get(i), values.get(i));
        }
        var parts = Packed.readAll(in, PackedFacts::readLine).stream()
                .collect(Collectors.toUnmodifiableMap(Line::key, Line::values));
        return new MachineFacts(family, Map.copyOf(causes), parts);
    }

    private static void writeLine(DataOutputStream out, Line line) throws IOException {
        Packed.text(out, line.key());
        Packed.writeAll(out, line.values(), Packed::address);
    }

    private static Line readLine(DataInputStream in) throws IOException {
        return new Line(Packed.text(in), Packed.readAll(in, Packed::address));
    }

    private static void writeLife(DataOutputStream out, Life life) throws IOException {
        Packed.text(out, life.shape().toPlainString());
        Packed.text(out, life.scale());
    }

    private static Life readLife(DataInputStream in) throws IOException {
        return new Life(new BigDecimal(Packed.text(in)), Packed.text(in));
    }

    private static void maybe(DataOutputStream out, Optional<Address> address) throws IOException {
        Packed.writeAll(out, address.stream().toList(), Packed::address);
    }

    private static Optional<Address> maybe(DataInputStream in) throws IOException {
        return first(in, Packed::address);
    }

    private static <T> Optional<T> first(DataInputStream in, Packed.Reader<T> reader) throws IOException {
        return Packed.readAll(in, reader).stream().findFirst();
    }
}

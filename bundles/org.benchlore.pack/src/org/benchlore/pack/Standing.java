// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack;

import java.util.Optional;

import org.benchlore.model.Kind;
import org.benchlore.store.Row;

/** Says what may go into a pack by its standing: reviewed and proved, unless more was asked for. */
final class Standing {

    private final PackRequest request;

    Standing(PackRequest request) {
        this.request = request;
    }

    /** The reason why something stays out, empty if it may come along. */
    Optional<String> refuses(Row row) {
        return switch (row.kind()) {
            case PROCEDURE -> procedure(row.status());
            case NOTE -> note(row.status());
            case UNIT -> stays(Extra.UNITS);
            case JOB -> stays(Extra.JOBS);
            case SHOP, GLOSSARY -> Optional.of("belongs to the shop");
            default -> Optional.empty();
        };
    }

    private Optional<String> stays(Extra extra) {
        return request.has(extra) ? Optional.empty() : Optional.of("stays out unless chosen");
    }

    private Optional<String> procedure(String status) {
        return switch (status) {
            case "REVIEWED" -> Optional.empty();
            case "WITHDRAWN" -> request.withdrawn() ? Optional.empty() : Optional.of("is withdrawn");
            default -> request.drafts() ? Optional.empty() : Optional.of("is a draft");
        };
    }

    private Optional<String> note(String status) {
        return switch (status) {
            case "SEEN", "HELD" -> Optional.empty();
            case "SUPERSEDED", "RULED_OUT" -> request.withdrawn() ? Optional.empty() : Optional.of("is not followed any more");
            default -> request.drafts() ? Optional.empty() : Optional.of("is not proved yet");
        };
    }

    /** Kinds that are looked for because they speak of what is packed. */
    boolean isAbout(Row row) {
        return row.kind() == Kind.NOTE || row.kind() == Kind.DOCUMENT || row.kind() == Kind.CODE
                || row.kind() == Kind.JOB && request.has(Extra.JOBS);
    }
}

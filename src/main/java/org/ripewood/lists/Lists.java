package org.ripewood.lists;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.stream.Collectors;
import org.ripewood.lists.ListText.Row;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.records.PersistenceContext;

/**
 * Enters lists. Each is first entered for trial and taken back: so every rule of the rooms is
 * asked, and what would be entered is what will be.
 */
@ApplicationScoped
@Transactional(Transactional.TxType.NOT_SUPPORTED)
public class Lists {

    /** Enough to be worth a flush, few enough to stay quick. */
    private static final int ROWS_HELD = 100;

    private static final int MOST_SECONDS = 300;

    /** Ends a trial. */
    private static final class TakenBack extends RuntimeException {
        TakenBack() {
            super("a trial is over", null, false, false);
        }
    }

    private final ListRows entering;
    private final PersistenceContext openRecords;

    Lists(ListRows entering, PersistenceContext openRecords) {
        this.entering = entering;
        this.openRecords = openRecords;
    }

    /**
     * Reads a list and does with it what was chosen. Lists of people are for registrars; those of
     * trees and readings for instructors too, of trees within their reach.
     */
    public ListOutcome take(Actor actor, ListKind kind, String text, Choice choice) {
        requireMay(actor, kind);
        var faults = new ArrayList<ListFault>();
        var rows = ListText.read(kind, text, faults);
        var good = trial(actor, kind, rows, faults);
        faults.sort(Comparator.comparingInt(ListFault::line));
        boolean enter =
                choice == Choice.GOOD_ROWS || (choice == Choice.ALL_OR_NOTHING && faults.isEmpty());
        if (enter && !good.isEmpty()) {
            QuarkusTransaction.requiringNew()
                    .timeout(MOST_SECONDS)
                    .run(() -> enter(actor, kind, good));
        }
        return new ListOutcome(
                kind,
                choice,
                rows.size(),
                enter ? good.size() : 0,
                good.stream()
                        .map(row -> new ListOutcome.GoodRow(row.line(), words(kind, row)))
                        .toList(),
                faults);
    }

    private void requireMay(Actor actor, ListKind kind) {
        if (kind == ListKind.PEOPLE || !actor.is(Role.INSTRUCTOR)) {
            actor.require(Role.REGISTRAR, "enter such a list");
        }
    }

    private List<Row> trial(Actor actor, ListKind kind, List<Row> rows, List<ListFault> faults) {
        var good = new ArrayList<Row>();
        if (rows.isEmpty()) {
            return good;
        }
        try {
            QuarkusTransaction.requiringNew()
                    .timeout(MOST_SECONDS)
                    .run(
                            () -> {
                                enterForTrial(actor, kind, rows, good, faults);
                                throw new TakenBack();
                            });
        } catch (TakenBack asMeant) {
            // Nothing of the trial stays.
        }
        return good;
    }

    private void enterForTrial(
            Actor actor, ListKind kind, List<Row> rows, List<Row> good, List<ListFault> faults) {
        var known = entering.known(actor, kind);
        var lines = new HashMap<String, Integer>();
        for (int at = 0; at < rows.size(); at++) {
            var row = rows.get(at);
            var found = entering.faults(actor, kind, row, known, lines);
            faults.addAll(found);
            if (found.isEmpty()) {
                good.add(row);
            }
            if (faults.isEmpty()) {
                putAwayNowAndThen(at);
            }
        }
    }

    private void enter(Actor actor, ListKind kind, List<Row> good) {
        var known = entering.known(actor, kind);
        var lines = new HashMap<String, Integer>();
        for (int at = 0; at < good.size(); at++) {
            var row = good.get(at);
            var found = entering.faults(actor, kind, row, known, lines);
            if (!found.isEmpty()) {
                throw Refused.conflict(
                        "Something changed while the list was read: line %d: %s"
                                .formatted(row.line(), found.get(0).message()),
                        "Maybe try once more.");
            }
            putAwayNowAndThen(at);
        }
    }

    private void putAwayNowAndThen(int at) {
        if (at % ROWS_HELD == ROWS_HELD - 1) {
            openRecords.putAway();
        }
    }

    private static String words(ListKind kind, Row row) {
        return kind.needed().stream().map(row::cell).collect(Collectors.joining(", "));
    }
}

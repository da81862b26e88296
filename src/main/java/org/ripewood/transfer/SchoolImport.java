package org.ripewood.transfer;

import io.quarkus.narayana.jta.runtime.TransactionConfiguration;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.platform.records.PersistenceContext;

/** Brings a school in from its files: all of it, or nothing and a list of what is wrong. */
@ApplicationScoped
class SchoolImport {

    private static final String PEOPLE = "people.yaml";
    private static final String SITES = "sites.yaml";
    private static final String COURSES = "courses.yaml";
    private static final String SESSIONS = "sessions.yaml";

    /** A school may keep no stock here. */
    private static final String STOCK = "stock.yaml";

    private static final Set<String> FILES = Set.of(PEOPLE, SITES, COURSES, SESSIONS, STOCK);

    /** A school of hundreds of trees takes minutes; no page asks for this. */
    private static final int MOST_SECONDS = 1_800;

    /** Enough to be worth a flush, few enough to stay quick. */
    private static final int DEEDS_HELD = 100;

    private final Rooms rooms;
    private final Today today;
    private final PersistenceContext openRecords;

    SchoolImport(Rooms rooms, Today today, PersistenceContext openRecords) {
        this.rooms = rooms;
        this.today = today;
        this.openRecords = openRecords;
    }

    /**
     * Enters a school in one transaction.
     *
     * @param loadingDay the day offsets count from, and the last day anything is entered as of
     * @param sheet makes the passwords and keeps how to sign in
     * @param beforeItStays called when everything is entered; what it throws undoes all of it
     * @throws FaultyFiles with every fault of every file; nothing is entered then
     */
    @Transactional
    @TransactionConfiguration(timeout = MOST_SECONDS)
    void load(SchoolFiles files, LocalDate loadingDay, SignInSheet sheet, Runnable beforeItStays) {
        entered(files, loadingDay, sheet, null);
        beforeItStays.run();
    }

    /**
     * Enters a sample into a school that is there, in the caller's transaction.
     *
     * @return what was entered
     * @throws FaultyFiles with every fault of every file
     */
    @Transactional
    ImportedIds loadSample(SchoolFiles files, LocalDate loadingDay, Given given) {
        return entered(files, loadingDay, new SignInSheet(), given);
    }

    private ImportedIds entered(
            SchoolFiles files, LocalDate loadingDay, SignInSheet sheet, @Nullable Given given) {
        var faults = new Faults();
        var deeds = read(files, loadingDay, sheet, given, faults);
        var register = new ImportedIds();
        today.asOf(loadingDay, () -> enter(deeds, register, loadingDay, faults));
        faults.throwIfAny();
        return register;
    }

    private List<ImportStep> read(
            SchoolFiles files,
            LocalDate loadingDay,
            SignInSheet sheet,
            @Nullable Given given,
            Faults faults) {
        var codes = new Codes();
        var script = new Script(codes);
        var skills = new Script(codes);
        var people = new PeopleFile(rooms, script, skills, sheet, given);
        open(files, PEOPLE, loadingDay, faults, page -> file -> people.read(file, page));
        var sites = new SitesFile(rooms, script, given == null ? null : given.siteId());
        open(files, SITES, loadingDay, faults, page -> file -> sites.read(file, page));
        var courses = new CoursesFile(rooms, script);
        open(files, COURSES, loadingDay, faults, page -> file -> courses.read(file, page));
        if (files.texts().containsKey(STOCK)) {
            var stock = new StockFile(rooms, script);
            open(files, STOCK, loadingDay, faults, page -> file -> stock.read(file, page));
        }
        script.addByDay(skills);
        for (var name : files.texts().keySet().stream().sorted().toList()) {
            if (name.startsWith(SchoolFiles.TREES)) {
                var tree = new Script(codes);
                open(
                        files,
                        name,
                        loadingDay,
                        faults,
                        page ->
                                file ->
                                        new TreeFile(rooms, tree, page, files.pictures())
                                                .read(file));
                script.addByDay(tree);
            } else if (!FILES.contains(name)) {
                faults.add(
                        new FileFault(
                                name,
                                0,
                                "no such file is expected here." + Suggestion.maybe(FILES, name)));
            }
        }
        var sessions = new SessionsFile(rooms, script);
        open(files, SESSIONS, loadingDay, faults, page -> file -> sessions.read(file, page));
        codes.check(faults);
        return script.deeds();
    }

    private static void open(
            SchoolFiles files,
            String name,
            LocalDate loadingDay,
            Faults faults,
            Function<Page, Consumer<Entry>> reader) {
        var page = new Page(name, loadingDay, faults);
        var text = files.texts().get(name);
        if (text == null) {
            page.fault(0, "the file is missing");
            return;
        }
        var file = page.open(text);
        if (file != null) {
            reader.apply(page).accept(file);
        }
    }

    private void enter(
            List<ImportStep> deeds, ImportedIds register, LocalDate loadingDay, Faults faults) {
        int held = 0;
        for (var deed : deeds) {
            if (++held % DEEDS_HELD == 0 && faults.count() == 0) {
                openRecords.putAway();
            }
            var day = deed.day().isBefore(loadingDay) ? deed.day() : loadingDay;
            try {
                today.asOf(day, () -> deed.task().enter(register));
            } catch (ImportedIds.NotEntered alreadyTold) {
                // What it stands on is among the faults.
            } catch (Refused e) {
                tell(e.problem(), deed.place(), faults);
            }
        }
    }

    private static void tell(Problem problem, Place place, Faults faults) {
        for (var fault : problem.faults()) {
            faults.add(place.refused(fault.field(), fault.message()));
        }
        if (problem.faults().isEmpty()) {
            var maybe = problem.maybe() == null ? "" : " " + problem.maybe();
            faults.add(place.fault("", problem.detail() + maybe));
        }
    }
}

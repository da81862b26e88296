package org.ripewood.photos;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.hibernate.SessionFactory;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.standing.Assigner;
import org.ripewood.trees.HandOver;
import org.ripewood.trees.HandOvers;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;

/** Photos of a tree: who may, what is kept, and that files and rows agree. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class PhotosTest {

    private static final LocalDate TODAY = School.TODAY;

    @Inject School school;
    @Inject Photos photos;
    @Inject PhotoRows rows;
    @Inject PhotoStore store;
    @Inject OrphanFileCleanup sweep;
    @Inject Assigner assigner;
    @Inject Trees trees;
    @Inject HandOvers handOvers;
    @Inject SessionFactory sessions;

    @ConfigProperty(name = "ripewood.photos.folder")
    String folder;

    private School.Group group;
    private Actor student;
    private Actor instructor;
    private Tree tree;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        student = group.student();
        instructor = group.instructor();
        tree = school.tree(instructor, student, "acer_palmatum");
    }

    private static NewPhoto said(Viewpoint view, @Nullable LocalDate on) {
        return new NewPhoto(on, view, null, null, null);
    }

    private Photo add(Actor actor, NewPhoto said) {
        return add(actor, said, Pictures.jpeg());
    }

    private Photo add(Actor actor, NewPhoto said, byte[] sent) {
        return photos.add(actor, tree.id(), said, new ByteArrayInputStream(sent));
    }

    private static int status(Runnable act) {
        return catchThrowableOfType(Refused.class, act::run).problem().status();
    }

    private byte[] bytes(Actor actor, long photoId, PhotoSize size) throws IOException {
        try (var stream = photos.open(actor, photoId, size).stream()) {
            return stream.readAllBytes();
        }
    }

    private List<Path> files() throws IOException {
        var at = Path.of(folder);
        if (!Files.exists(at)) {
            return List.of();
        }
        try (var files = Files.walk(at)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }

    @Test
    void aPhotoIsKeptWithWhatIsSaidOfIt() throws Exception {
        var wound = school.wound(instructor, tree, "first branch", 24);
        var photo =
                add(
                        student,
                        new NewPhoto(
                                TODAY.minusDays(3),
                                Viewpoint.DETAIL,
                                " rolling in well ",
                                wound.id(),
                                null));
        assertThat(photo.takenOn()).isEqualTo(TODAY.minusDays(3));
        assertThat(photo.caption()).isEqualTo("rolling in well");
        assertThat(photo.byId()).isEqualTo(student.personId());
        assertThat(photo.widthPx()).isEqualTo(64);
        assertThat(photos.get(instructor, photo.id())).isEqualTo(photo);
        assertThat(photos.ofWound(student, tree.id(), wound.id())).containsExactly(photo);

        var whole = bytes(instructor, photo.id(), PhotoSize.WHOLE);
        assertThat(photo.bytes()).isEqualTo(whole.length);
        assertThat(photo.sha256())
                .isEqualTo(
                        HexFormat.of()
                                .formatHex(MessageDigest.getInstance("SHA-256").digest(whole)));
        assertThat(Pictures.decoded(whole).getWidth()).isEqualTo(64);
        assertThat(Pictures.decoded(bytes(student, photo.id(), PhotoSize.THUMBNAIL))).isNotNull();
    }

    @Test
    void theDayIsSaidOrNotedByTheCameraOrToday() {
        assertThat(add(student, said(Viewpoint.FRONT, null), noted("2025:05:04")).takenOn())
                .isEqualTo(LocalDate.of(2025, 5, 4));
        assertThat(add(student, said(Viewpoint.FRONT, TODAY), noted("2025:05:04")).takenOn())
                .isEqualTo(TODAY);
        // a camera's clock that nobody has set, before and after
        assertThat(add(student, said(Viewpoint.FRONT, null), noted("2126:05:04")).takenOn())
                .isEqualTo(TODAY);
        assertThat(add(student, said(Viewpoint.FRONT, null), noted("1601:01:01")).takenOn())
                .isEqualTo(TODAY);
        assertThat(add(student, said(Viewpoint.FRONT, null)).takenOn()).isEqualTo(TODAY);
        assertThat(status(() -> add(student, said(Viewpoint.FRONT, TODAY.plusDays(1)))))
                .isEqualTo(400);
        assertThat(status(() -> add(student, said(Viewpoint.FRONT, LocalDate.of(1899, 12, 31)))))
                .isEqualTo(400);
    }

    private static byte[] noted(String day) {
        return Pictures.withExif(Pictures.jpeg(), Pictures.exif(1, day + " 10:00:00"));
    }

    @Test
    void whoReachesTheTreeReachesItsPhotosAndNobodyElse() {
        var photo = add(student, said(Viewpoint.FRONT, TODAY));
        var other = school.newGroup();
        for (var stranger : List.of(other.student(), other.instructor())) {
            var id = photo.id();
            assertThat(status(() -> photos.get(stranger, id))).isEqualTo(404);
            assertThat(status(() -> photos.open(stranger, id, PhotoSize.WHOLE))).isEqualTo(404);
            assertThat(status(() -> photos.list(stranger, tree.id(), new PageRequest(0, 5))))
                    .isEqualTo(404);
            assertThat(status(() -> photos.ofTree(stranger, tree.id()))).isEqualTo(404);
            assertThat(status(() -> photos.removed(stranger, tree.id()))).isEqualTo(404);
            assertThat(status(() -> add(stranger, said(Viewpoint.FRONT, TODAY)))).isEqualTo(404);
            assertThat(status(() -> photos.change(stranger, id, 0, said(Viewpoint.BACK, TODAY))))
                    .isEqualTo(404);
            assertThat(status(() -> photos.remove(stranger, id, 0))).isEqualTo(404);
            var hidden = catchThrowableOfType(Refused.class, () -> photos.get(stranger, id));
            var none = catchThrowableOfType(Refused.class, () -> photos.get(stranger, 0));
            assertThat(hidden.problem().detail().replace("" + id, "0"))
                    .isEqualTo(none.problem().detail());
        }
        var office = school.person("Rika Registrar", Role.REGISTRAR);
        assertThat(photos.get(office, photo.id())).isEqualTo(photo);
        assertThat(status(() -> photos.remove(office, photo.id(), photo.version()))).isEqualTo(403);
    }

    private static final String WORDS = "at my aunt's in the hills";

    /** Somebody who comes into the course and is given the tree, whom the former does not reach. */
    private Actor handedOn() {
        var next = school.person("Nora Next", Role.STUDENT);
        school.join(group, next, Role.STUDENT);
        var to = new HandOver(next.personId(), TODAY);
        handOvers.handOver(student, tree.id(), trees.get(student, tree.id()).version(), to);
        return next;
    }

    @Test
    void aFormerKeepersWordsUnderAPhotoStayBehind() {
        var wound = school.wound(instructor, tree, "first branch", 24);
        var step =
                assigner.noteFoundDone(
                        instructor, tree.id(), "root_check", TODAY, "seen at the bench");
        var kept =
                add(student, new NewPhoto(TODAY, Viewpoint.DETAIL, WORDS, wound.id(), step.id()));
        var gone = add(student, new NewPhoto(TODAY, Viewpoint.BACK, WORDS, null, null));
        photos.remove(student, gone.id(), gone.version());
        var next = handedOn();
        var page = new PageRequest(0, 5);
        var told =
                List.of(
                        List.of(photos.get(next, kept.id())),
                        photos.list(next, tree.id(), page).items(),
                        photos.ofTree(next, tree.id()),
                        photos.removed(next, tree.id()),
                        photos.ofWound(next, tree.id(), wound.id()),
                        photos.ofStep(next, step.id()));
        assertThat(told).allSatisfy(some -> assertThat(some).hasSize(1));
        assertThat(told.toString()).doesNotContain(WORDS);
        assertThat(photos.get(instructor, kept.id()).caption()).isEqualTo(WORDS);
        var own = add(next, new NewPhoto(TODAY, Viewpoint.FRONT, "mine now", null, null));
        assertThat(photos.get(next, own.id()).caption()).isEqualTo("mine now");
    }

    @Test
    void wordsThatNobodyReadsAreNotWrittenOver() {
        var photo = add(student, new NewPhoto(TODAY, Viewpoint.FRONT, WORDS, null, null));
        var next = handedOn();
        var changed = photos.change(next, photo.id(), photo.version(), said(Viewpoint.BACK, TODAY));
        assertThat(changed.view()).isEqualTo(Viewpoint.BACK);
        assertThat(changed.caption()).isNull();
        assertThat(photos.get(instructor, photo.id()).caption()).isEqualTo(WORDS);
        var mine = new NewPhoto(TODAY, Viewpoint.BACK, "mine", null, null);
        assertThat(status(() -> photos.change(next, photo.id(), changed.version(), mine)))
                .isEqualTo(400);
        assertThat(photos.get(instructor, photo.id()).caption()).isEqualTo(WORDS);
        assertThat(photos.remove(next, photo.id(), changed.version()).caption()).isNull();
    }

    @Test
    void whoseWordsAreHiddenIsAskedOnceHoweverManyPhotos() {
        add(student, said(Viewpoint.FRONT, TODAY));
        var next = handedOn();
        long few = queries(next);
        for (int i = 0; i < 6; i++) {
            add(next, said(Viewpoint.BACK, TODAY.minusDays(i)));
            add(instructor, said(Viewpoint.LEFT, TODAY.minusDays(i)));
        }
        assertThat(queries(next)).isEqualTo(few);
    }

    private long queries(Actor actor) {
        var statistics = sessions.getStatistics();
        statistics.setStatisticsEnabled(true);
        statistics.clear();
        photos.ofTree(actor, tree.id());
        return statistics.getPrepareStatementCount();
    }

    @Test
    void woundAndStepMustBelongToTheTree() {
        var otherTree = school.tree(instructor, student, "acer_palmatum");
        var wound = school.wound(instructor, otherTree, "left", 20);
        var step =
                assigner.noteFoundDone(
                        instructor, otherTree.id(), "root_check", TODAY, "seen at the bench");
        var mine =
                assigner.noteFoundDone(
                        instructor, tree.id(), "root_check", TODAY, "seen at the bench");
        assertThat(
                        status(
                                () ->
                                        add(
                                                student,
                                                new NewPhoto(
                                                        null,
                                                        Viewpoint.DETAIL,
                                                        null,
                                                        wound.id(),
                                                        null))))
                .isEqualTo(404);
        assertThat(
                        status(
                                () ->
                                        add(
                                                student,
                                                new NewPhoto(
                                                        null,
                                                        Viewpoint.DETAIL,
                                                        null,
                                                        null,
                                                        step.id()))))
                .isEqualTo(404);
        var photo = add(student, new NewPhoto(null, Viewpoint.DETAIL, null, null, mine.id()));
        assertThat(photos.ofStep(instructor, mine.id())).containsExactly(photo);
        assertThat(photos.ofStep(instructor, step.id())).isEmpty();
    }

    @Test
    void whatIsSaidIsChangedByWhoHasSeenItsVersion() {
        var photo = add(student, said(Viewpoint.DETAIL, TODAY.minusDays(9)));
        var changed =
                photos.change(
                        instructor,
                        photo.id(),
                        photo.version(),
                        new NewPhoto(null, Viewpoint.FRONT, "after wiring", null, null));
        assertThat(changed.fromFront()).isTrue();
        assertThat(changed.takenOn()).isEqualTo(TODAY.minusDays(9));
        assertThat(changed.caption()).isEqualTo("after wiring");
        assertThat(changed.version()).isGreaterThan(photo.version());
        assertThat(
                        status(
                                () ->
                                        photos.change(
                                                student,
                                                photo.id(),
                                                photo.version(),
                                                said(Viewpoint.BACK, null))))
                .isEqualTo(412);
        assertThat(photos.get(student, photo.id())).isEqualTo(changed);
    }

    @Test
    void onePhotoTakenAwayLeavesAMarkAndNoFile() throws Exception {
        var before = files();
        var photo = add(instructor, said(Viewpoint.FRONT, TODAY));
        assertThat(files()).hasSize(before.size() + 2);
        var mark = photos.remove(student, photo.id(), photo.version());
        assertThat(mark.removed()).isTrue();
        assertThat(mark.removedById()).isEqualTo(student.personId());
        assertThat(files()).containsExactlyInAnyOrderElementsOf(before);
        assertThat(status(() -> photos.open(student, photo.id(), PhotoSize.WHOLE))).isEqualTo(404);
        assertThat(photos.ofTree(student, tree.id())).isEmpty();
        assertThat(photos.list(student, tree.id(), new PageRequest(0, 5)).total()).isZero();
        assertThat(photos.removed(student, tree.id())).containsExactly(mark);
        assertThat(photos.get(student, photo.id())).isEqualTo(mark);
        // once more is once, and nothing more can be said of it
        assertThat(photos.remove(instructor, photo.id(), photo.version())).isEqualTo(mark);
        assertThat(
                        status(
                                () ->
                                        photos.change(
                                                student,
                                                photo.id(),
                                                mark.version(),
                                                said(Viewpoint.BACK, null))))
                .isEqualTo(409);
    }

    @Test
    void whatIsRefusedLeavesNothing() throws Exception {
        var before = files();
        var count = rows.countOfTree(tree.id());
        assertThat(status(() -> add(student, said(Viewpoint.FRONT, TODAY), new byte[] {'<'})))
                .isEqualTo(400);
        assertThat(files()).containsExactlyInAnyOrderElementsOf(before);
        assertThat(rows.countOfTree(tree.id())).isEqualTo(count);
    }

    @Test
    void aTreeHasOnlySoManyPhotosAndAPersonOnlySoManyADay() {
        // the profile's own limits are too high to reach in a test
        var few = new PhotoLimits(megabyte(), 60_000_000, 2, 200);
        var book = bookWith(few);
        add(student, said(Viewpoint.FRONT, TODAY));
        book.check(student, tree.id(), said(Viewpoint.FRONT, TODAY));
        var second = add(instructor, said(Viewpoint.FRONT, TODAY));
        assertThat(status(() -> book.check(student, tree.id(), said(Viewpoint.FRONT, TODAY))))
                .isEqualTo(409);
        photos.remove(instructor, second.id(), second.version());
        book.check(student, tree.id(), said(Viewpoint.FRONT, TODAY));

        var lazy = bookWith(new PhotoLimits(megabyte(), 60_000_000, 500, 1));
        assertThat(status(() -> lazy.check(student, tree.id(), said(Viewpoint.FRONT, TODAY))))
                .isEqualTo(409);
        // what was taken away counts as well
        assertThat(status(() -> lazy.check(instructor, tree.id(), said(Viewpoint.FRONT, TODAY))))
                .isEqualTo(409);
    }

    @Inject PhotoReach reach;
    @Inject PhotoRedaction veil;
    @Inject org.ripewood.platform.Today today;
    @Inject org.ripewood.trees.TreeDays days;

    private PhotoBook bookWith(PhotoLimits limits) {
        return new PhotoBook(rows, reach, veil, limits, today, days);
    }

    private static io.quarkus.runtime.configuration.MemorySize megabyte() {
        return new io.quarkus.runtime.configuration.MemorySize(
                java.math.BigInteger.valueOf(1_000_000));
    }

    @Test
    void theSweepTakesAwayOnlyWhatNoRowPointsTo() throws Exception {
        var photo = add(student, said(Viewpoint.FRONT, TODAY));
        var leftover = FileKeys.fresh();
        store.put(leftover, new byte[] {1});
        var now = Clock.systemUTC().instant();
        sweep.sweep(now.plus(Duration.ofMinutes(30)));
        store.open(leftover).close();
        assertThat(sweep.sweep(now.plus(Duration.ofMinutes(61)))).isPositive();
        assertThat(store.keptBefore(Instant.MAX)).doesNotContain(leftover);
        assertThat(bytes(student, photo.id(), PhotoSize.WHOLE)).isNotEmpty();
        assertThat(bytes(student, photo.id(), PhotoSize.THUMBNAIL)).isNotEmpty();
    }

    @Test
    void listsAreLatestFirst() {
        var old = add(student, said(Viewpoint.FRONT, TODAY.minusYears(2)));
        var young = add(student, said(Viewpoint.FRONT, TODAY));
        var middle = add(student, said(Viewpoint.BACK, TODAY.minusYears(1)));
        assertThat(photos.ofTree(student, tree.id())).containsExactly(young, middle, old);
        var page = photos.list(student, tree.id(), new PageRequest(1, 2));
        assertThat(page.items()).containsExactly(old);
        assertThat(page.total()).isEqualTo(3);
    }
}

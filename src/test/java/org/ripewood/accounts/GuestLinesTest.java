package org.ripewood.accounts;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.people.Course;
import org.ripewood.platform.Role;

/** A pasted list of people, read line by line. */
@Tag("fast")
class GuestLinesTest {

    private static final Course SPRING = course(1, "Spring bench");
    private static final Course TWIN = course(2, "Twin");
    private static final Course OTHER_TWIN = course(3, "Twin");

    private static Course course(long id, String name) {
        return new Course(id, 0, name, LocalDate.of(2026, 3, 1), LocalDate.of(2026, 11, 1));
    }

    private static List<GuestLine> read(String text) {
        var given = Set.of("anna.greve", "anna.greve2", "taken");
        return new GuestLines(given, List.of(SPRING, TWIN, OTHER_TWIN)).read(text);
    }

    private static List<String> faults(String line) {
        var lines = read(line);
        assertThat(lines).hasSize(1);
        return lines.get(0).faults();
    }

    @Test
    void onlyNamesWillDo() {
        var lines = read("Oskar Lind\r\n\n  Ines Marit Falk  \n");

        assertThat(lines).extracting(GuestLine::number).containsExactly(1, 3);
        assertThat(lines)
                .extracting(GuestLine::name)
                .containsExactly("Oskar Lind", "Ines Marit Falk");
        assertThat(lines).extracting(GuestLine::login).containsExactly("oskar.lind", "ines.falk");
        assertThat(lines)
                .allSatisfy(
                        line -> {
                            assertThat(line.roles()).containsExactly(Role.STUDENT);
                            assertThat(line.course()).isNull();
                            assertThat(line.faults()).isEmpty();
                        });
    }

    @Test
    void allFourAreTakenWithSemicolonsOrTabs() {
        for (var text :
                List.of(
                        "Oskar Lind; Oskar; Instructor + student; spring BENCH",
                        "Name\tSign-in name\tRole\tCourse\n"
                                + "Oskar Lind\toskar\tinstructor,student\tSpring bench\t")) {
            var line = read(text).get(0);
            assertThat(line.faults()).isEmpty();
            assertThat(line.login()).isEqualTo("oskar");
            assertThat(line.roles()).containsExactlyInAnyOrder(Role.STUDENT, Role.INSTRUCTOR);
            assertThat(line.course()).isEqualTo(SPRING);
            assertThat(line.inCourse()).isEqualTo(Role.STUDENT);
        }
        assertThat(read("A B; ; instructor; Spring bench").get(0).inCourse())
                .isEqualTo(Role.INSTRUCTOR);
    }

    @Test
    void whatIsWrittenAgainReadsTheSame() {
        var lines = read("Oskar Lind\nInes Falk; ines; instructor; Spring bench");
        var again = read(ManyGuests.written(lines));

        assertThat(again).isEqualTo(lines);
    }

    @Test
    void aProposedNameIsNobodysAndNotWrittenElsewhere() {
        assertThat(read("Anna Greve\nAnna Greve\nOskar Lind\nOther; oskar.lind"))
                .extracting(GuestLine::login)
                .containsExactly("anna.greve3", "anna.greve4", "oskar.lind2", "oskar.lind");
    }

    @ParameterizedTest
    @CsvSource({
        "Søren Ærø, soren.aero",
        "Łukasz Żółć, lukasz.zolc",
        "Jörg Groß, jorg.gross",
        "Siân O'Hara, sian.ohara",
        "Ana-Luz, ana.luz",
        "Prince, prince"
    })
    void lettersOfAllKindsBecomePlain(String name, String login) {
        assertThat(read(name).get(0).login()).isEqualTo(login);
    }

    @Test
    void whatIsWrongIsToldOfItsLine() {
        assertThat(faults("山田 太郎").get(0)).contains("no sign-in name can be made");
        assertThat(faults("; oskar").get(0)).contains("expected a name");
        assertThat(faults("N".repeat(121) + "; n").get(0)).contains("at most 120");
        assertThat(faults("Oskar; os kar").get(0)).contains("found “os kar”");
        assertThat(faults("Oskar; " + "o".repeat(61)).get(0)).contains("at most 60");
        assertThat(faults("Oskar; Taken").get(0)).contains("“taken” is somebody's already");
        assertThat(faults("Oskar; o; pupil").get(0)).contains("found “pupil”");
        assertThat(faults("Oskar; o; studnet").get(0)).contains("Maybe “student”.");
        assertThat(faults("Oskar; o; ; Sprign bench").get(0)).contains("Maybe “Spring bench”.");
        assertThat(faults("Oskar; o; ; Twin").get(0)).contains("2 courses are called");
        assertThat(faults("Oskar; o; registrar; Spring bench").get(0)).contains("instructor, too");
        assertThat(faults("Oskar; o; student; Spring bench; more").get(0)).contains("“more”");
        assertThat(read("A; same\nB; SAME").get(1).faults().get(0)).contains("a line above");
        assertThat(faults("; O O; pupil; Nowhere")).hasSize(4);
    }

    @Test
    void longNamesLeaveRoomForANumber() {
        var name = "a".repeat(60) + " " + "b".repeat(50);
        assertThat(read(name + "\n" + name))
                .extracting(line -> line.login().length())
                .containsExactly(50, 51);
    }
}

package org.ripewood.load;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;

/**
 * Fills a stopped demo school with courses of invented students, so that a load can be put on a
 * large one: ten trees a student, twenty students a course, four observations a tree.
 *
 * <p>Arguments: the database's JDBC address, and how many trees there shall be more.
 */
public final class LargeSchool {

    private static final int TREES_A_STUDENT = 10;
    private static final int STUDENTS_A_COURSE = 20;
    private static final int STEP = 1_000;

    /** Far from every id the service has given or is going to give meanwhile. */
    private static final long FIRST_ID = 1_000_000_000L;

    private LargeSchool() {}

    public static void main(String[] arguments) throws SQLException {
        int trees = Integer.parseInt(arguments[1]);
        try (var database = DriverManager.getConnection(arguments[0], "ripewood", "ripewood")) {
            database.setAutoCommit(false);
            int students = trees / TREES_A_STUDENT;
            people(database, students);
            courses(database, students);
            trees(database, trees);
            database.commit();
        }
        System.out.println(trees + " trees more");
    }

    private static void people(Connection database, int students) throws SQLException {
        many(
                database,
                students,
                "insert into person (id, version, name, login, password_hash, active)"
                        + " values (?, 0, ?, ?, 'none', true)",
                "insert into person_role (person_id, role) values (?, 'STUDENT')");
    }

    private static void courses(Connection database, int students) throws SQLException {
        int courses = (students + STUDENTS_A_COURSE - 1) / STUDENTS_A_COURSE;
        try (var course =
                        database.prepareStatement(
                                "insert into course (id, version, name, starts_on, ends_on) values"
                                        + " (?, 0, ?, date '2026-01-01', date '2027-12-31')");
                var member =
                        database.prepareStatement(
                                "insert into membership (id, course_id, person_id, role, joined_on,"
                                        + " member_of) values (?, ?, ?, 'STUDENT',"
                                        + " date '2026-01-01', ?)")) {
            for (int i = 0; i < courses; i++) {
                course.setLong(1, FIRST_ID + i);
                course.setString(2, "Large course " + i);
                course.addBatch();
            }
            course.executeBatch();
            for (int i = 0; i < students; i++) {
                member.setLong(1, FIRST_ID + i);
                member.setLong(2, FIRST_ID + i / STUDENTS_A_COURSE);
                member.setLong(3, FIRST_ID + i);
                member.setString(4, (FIRST_ID + i / STUDENTS_A_COURSE) + "/" + (FIRST_ID + i));
                member.addBatch();
            }
            member.executeBatch();
        }
    }

    private static void many(Connection database, int count, String person, String role)
            throws SQLException {
        try (var persons = database.prepareStatement(person);
                var roles = database.prepareStatement(role)) {
            for (int i = 0; i < count; i++) {
                persons.setLong(1, FIRST_ID + i);
                persons.setString(2, "Large student " + i);
                persons.setString(3, "large." + i);
                persons.addBatch();
                roles.setLong(1, FIRST_ID + i);
                roles.addBatch();
            }
            persons.executeBatch();
            roles.executeBatch();
        }
    }

    private static void trees(Connection database, int trees) throws SQLException {
        try (var tree =
                        database.prepareStatement(
                                "insert into tree (id, version, label, species, keeper_id, site_id,"
                                        + " came_on, by_id, recorded_at) select ?, 0, ?,"
                                        + " 'acer_palmatum', ?, (select min(id) from site),"
                                        + " date '2024-03-01', ?, current_timestamp");
                var keeping =
                        database.prepareStatement(
                                "insert into tree_keeping (id, tree_id, keeper_id, since, by_id,"
                                        + " recorded_at) values (?, ?, ?, date '2024-03-01', ?,"
                                        + " current_timestamp)");
                var seen =
                        database.prepareStatement(
                                "insert into observation (id, tree_id, fact, number_value,"
                                        + " observed_on, source, by_id, recorded_at) values (?, ?,"
                                        + " ?, ?, date '2026-04-01', 'STUDENT', ?,"
                                        + " current_timestamp)")) {
            for (int i = 0; i < trees; i++) {
                long id = FIRST_ID + i;
                long keeper = FIRST_ID + i / TREES_A_STUDENT;
                tree.setLong(1, id);
                tree.setString(2, "Large tree " + i);
                tree.setLong(3, keeper);
                tree.setLong(4, keeper);
                tree.addBatch();
                keeping.setLong(1, id);
                keeping.setLong(2, id);
                keeping.setLong(3, keeper);
                keeping.setLong(4, keeper);
                keeping.addBatch();
                String[] facts = {
                    "vigour_index", "shoot_extension_mm", "pest_level", "leaf_colour_grade"
                };
                double[] values = {70, 120, 1, 4};
                for (int fact = 0; fact < facts.length; fact++) {
                    seen.setLong(1, FIRST_ID + 4L * i + fact);
                    seen.setLong(2, id);
                    seen.setString(3, facts[fact]);
                    seen.setDouble(4, values[fact]);
                    seen.setLong(5, keeper);
                    seen.addBatch();
                }
                if (i % STEP == STEP - 1) {
                    tree.executeBatch();
                    keeping.executeBatch();
                    seen.executeBatch();
                }
            }
            tree.executeBatch();
            keeping.executeBatch();
            seen.executeBatch();
        }
    }
}

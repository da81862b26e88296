package org.ripewood.platform.guards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import io.github.bucket4j.TimeMeter;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.platform.problems.Refused;

/** Nobody keeps the machine busy for others by asking for papers and files. */
@Tag("fast")
class RateLimitTest {

    private static final int MOST = 3;

    /** Papers, files of a record and backups, lists, laid-out days and weeks ahead. */
    private static final Pattern COSTLY =
            Pattern.compile(
                    "GET .*\\.pdf|GET .*/weeks|GET /api/.*/record"
                            + "|POST (/api/v1)?/(record|lists.*|backups|record/backup)"
                            + "|POST .*/timetables?");

    private final AtomicLong nanos = new AtomicLong();

    private final RateLimit limit =
            new RateLimit(
                    MOST,
                    new TimeMeter() {
                        @Override
                        public long currentTimeNanos() {
                            return nanos.get();
                        }

                        @Override
                        public boolean isWallClockBased() {
                            return false;
                        }
                    });

    @Test
    void moreThanSoManyAMinuteAreRefusedAndOthersAreNot() {
        ask(MOST, 1);
        assertThat(catchThrowableOfType(Refused.class, () -> limit.count(1)).problem().status())
                .isEqualTo(429);
        limit.count(2);
        nanos.addAndGet(Duration.ofSeconds(20).toNanos());
        ask(1, 1);
        assertThat(catchThrowableOfType(Refused.class, () -> limit.count(1))).isNotNull();
    }

    @Test
    void whatWasNotAskedForDoesNotAddUp() {
        nanos.addAndGet(Duration.ofDays(1).toNanos());
        ask(MOST, 1);
        assertThat(catchThrowableOfType(Refused.class, () -> limit.count(1))).isNotNull();
    }

    private void ask(int times, long person) {
        for (int i = 0; i < times; i++) {
            limit.count(person);
        }
    }

    @Test
    void everyCostlyDoorIsLimited() {
        var limited = new TreeSet<String>();
        var unlimited = new ArrayList<String>();
        for (var type :
                new ClassFileImporter()
                        .withImportOption(new ImportOption.DoNotIncludeTests())
                        .importPackages("org.ripewood")) {
            if (!type.isAnnotatedWith(Path.class)) {
                continue;
            }
            for (var method : type.getMethods()) {
                var door = door(type.getAnnotationOfType(Path.class).value(), method);
                if (!COSTLY.matcher(door).matches()) {
                    continue;
                }
                if (method.isAnnotatedWith(RateLimited.class)
                        || type.isAnnotatedWith(RateLimited.class)) {
                    limited.add(door);
                } else {
                    unlimited.add(door);
                }
            }
        }
        assertThat(unlimited).isEmpty();
        assertThat(limited).hasSizeGreaterThan(15);
    }

    private static String door(String typePath, JavaMethod method) {
        var verb = verb(method);
        var path =
                method.isAnnotatedWith(Path.class)
                        ? method.getAnnotationOfType(Path.class).value()
                        : "";
        var whole = "/" + typePath + "/" + path;
        return verb + " " + whole.replaceAll("/+", "/").replaceAll("(?<=.)/$", "");
    }

    private static String verb(JavaMethod method) {
        return List.of(GET.class, POST.class).stream()
                .filter(method::isAnnotatedWith)
                .map(Class::getSimpleName)
                .findFirst()
                .orElse("");
    }
}

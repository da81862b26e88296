package org.ripewood.api.courses;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.Membership;
import org.ripewood.platform.Role;

/** Who teaches a course and who attends it, each by name, and who did, in the order they left. */
record MembersAnswer(List<Member> instructors, List<Member> students, List<Former> former) {

    record Member(long id, String name, LocalDate since) {}

    record Former(long id, String name, Role as, LocalDate since, LocalDate leftOn) {}

    static MembersAnswer of(List<Membership> all) {
        return new MembersAnswer(
                now(all, Role.INSTRUCTOR),
                now(all, Role.STUDENT),
                all.stream()
                        .flatMap(member -> former(member, member.leftOn()))
                        .sorted(Comparator.comparing(Former::leftOn).thenComparing(Former::name))
                        .toList());
    }

    private static List<Member> now(List<Membership> all, Role as) {
        return all.stream()
                .filter(member -> member.as() == as && member.leftOn() == null)
                .map(member -> new Member(member.personId(), member.name(), member.since()))
                .sorted(Comparator.comparing(Member::name).thenComparing(Member::id))
                .toList();
    }

    private static Stream<Former> former(Membership member, @Nullable LocalDate leftOn) {
        return leftOn == null
                ? Stream.empty()
                : Stream.of(
                        new Former(
                                member.personId(),
                                member.name(),
                                member.as(),
                                member.since(),
                                leftOn));
    }
}

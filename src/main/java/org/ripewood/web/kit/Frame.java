package org.ripewood.web.kit;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import java.time.LocalDate;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.school.NameShown;

/** What surrounds every page: who is signed in, where they may go, whether this is a demo. */
@Named
@RequestScoped
public class Frame {

    private final CurrentUser user;
    private final Today today;
    private final NameShown school;
    private final boolean demo;

    Frame(
            CurrentUser user,
            Today today,
            NameShown school,
            @ConfigProperty(name = "ripewood.demo", defaultValue = "false") boolean demo) {
        this.user = user;
        this.today = today;
        this.school = school;
        this.demo = demo;
    }

    public boolean isDemo() {
        return demo;
    }

    /** What the school is called; empty while it has no name. */
    public String getSchool() {
        return school.name();
    }

    public LocalDate getToday() {
        return today.date();
    }

    /** Whoever has to set up a second factor first has no way to anywhere else yet. */
    public boolean isSignedIn() {
        return user.signedIn() && !user.unfinished();
    }

    public boolean isRegistrar() {
        return user.signedIn() && user.actor().is(Role.REGISTRAR);
    }

    public boolean isInstructor() {
        return user.signedIn() && user.actor().is(Role.INSTRUCTOR);
    }

    public String getName() {
        return user.name();
    }
}

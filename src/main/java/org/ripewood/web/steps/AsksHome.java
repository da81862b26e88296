package org.ripewood.web.steps;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import java.util.List;
import org.ripewood.asks.AskWaiting;
import org.ripewood.asks.Asks;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;

/** What was asked, for the page everybody starts at: what waits for an instructor, or answers. */
@Named("asksHome")
@RequestScoped
public class AsksHome {

    private final Asks asks;
    private final CurrentUser user;

    AsksHome(Asks asks, CurrentUser user) {
        this.asks = asks;
        this.user = user;
    }

    public boolean teaches() {
        return user.actor().is(Role.INSTRUCTOR);
    }

    /** For instructors what waits, longest first; for others what was answered of late. */
    public List<AskWaiting> lines() {
        return teaches() ? asks.waiting(user.actor()) : asks.answeredOf(user.actor());
    }
}

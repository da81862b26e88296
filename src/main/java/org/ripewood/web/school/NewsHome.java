package org.ripewood.web.school;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import org.jspecify.annotations.Nullable;
import org.ripewood.news.News;
import org.ripewood.news.NewsTold;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;

/** What others did since one's last visit, for the page everybody starts at. */
@Named("newsHome")
@RequestScoped
public class NewsHome {

    private final News news;
    private final CurrentUser user;

    NewsHome(News news, CurrentUser user) {
        this.news = news;
        this.user = user;
    }

    /** For students and instructors; null for others, and when nothing happened. */
    public @Nullable NewsTold told() {
        var actor = user.actor();
        if (!actor.is(Role.STUDENT) && !actor.is(Role.INSTRUCTOR)) {
            return null;
        }
        var told = news.visit(actor, user.session());
        return told.lines().isEmpty() ? null : told;
    }
}

package org.ripewood.platform.guards;

import jakarta.annotation.Priority;
import jakarta.interceptor.AroundInvoke;
import jakarta.interceptor.Interceptor;
import jakarta.interceptor.InvocationContext;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.CurrentUser;

/** Counts a request before its work is done. */
@RateLimited
@Interceptor
@Priority(Interceptor.Priority.APPLICATION)
class RateLimiting {

    private final RateLimit limit;
    private final CurrentUser user;

    RateLimiting(RateLimit limit, CurrentUser user) {
        this.limit = limit;
        this.user = user;
    }

    @AroundInvoke
    @Nullable Object count(InvocationContext call) throws Exception {
        limit.count(user.actor().personId());
        return call.proceed();
    }
}

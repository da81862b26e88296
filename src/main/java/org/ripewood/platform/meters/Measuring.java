package org.ripewood.platform.meters;

import jakarta.annotation.Priority;
import jakarta.interceptor.AroundInvoke;
import jakarta.interceptor.Interceptor;
import jakarta.interceptor.InvocationContext;
import org.jspecify.annotations.Nullable;

/** Notes how long a measured method takes, its transaction included. */
@Measured(Meter.TREE_JUDGED)
@Interceptor
@Priority(Interceptor.Priority.PLATFORM_BEFORE)
class Measuring {

    private final Meters meters;

    Measuring(Meters meters) {
        this.meters = meters;
    }

    @AroundInvoke
    @Nullable Object measure(InvocationContext call) {
        var meter = call.getMethod().getAnnotation(Measured.class).value();
        return meters.time(meter, () -> proceed(call));
    }

    private static @Nullable Object proceed(InvocationContext call) {
        try {
            return call.proceed();
        } catch (RuntimeException e) {
            throw e;
        } catch (Exception e) {
            throw new IllegalStateException("no façade throws a checked exception", e);
        }
    }
}

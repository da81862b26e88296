package org.ripewood.signin;

import java.time.Instant;

/** A browser in which somebody is signed in. */
public record SignedIn(long sessionId, Instant since) {}

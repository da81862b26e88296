package org.ripewood.platform.guards;

import jakarta.interceptor.InterceptorBinding;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * On what costs the machine far more than the sender, such as papers and files of a record: one
 * person may ask for only so many a minute (OWASP ASVS 5.0, 2.4.1, from memory).
 */
@InterceptorBinding
@Target({ElementType.METHOD, ElementType.TYPE})
@Retention(RetentionPolicy.RUNTIME)
public @interface RateLimited {}

package org.tapeline.journal.quarkus.link;

import jakarta.ws.rs.NameBinding;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A page for families, without log-in, behind a signed link: visits are counted by address and by
 * the path parameter {@code token}, where there is one, and nothing of the page is kept, passed on
 * or found by search engines.
 */
@NameBinding
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.TYPE, ElementType.METHOD})
public @interface LinkPage {}

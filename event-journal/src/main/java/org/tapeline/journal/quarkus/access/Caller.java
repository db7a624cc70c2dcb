package org.tapeline.journal.quarkus.access;

import io.quarkus.security.identity.SecurityIdentity;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Who asks. Roles say what a person does ({@code fitter}, {@code coach}, {@code warehouse}, {@code
 * equipment-manager}), further roles say where ({@code field:NORTH}, {@code team:U10-HAWKS}); they
 * come alike from embedded users and from an OpenID Connect token.
 */
@Named("caller")
@RequestScoped
public class Caller {
  private final SecurityIdentity identity;

  Caller(SecurityIdentity identity) {
    this.identity = identity;
  }

  /** The staff id, such as {@code fitter.north}; empty when nobody is signed in. */
  public String id() {
    return identity.isAnonymous() ? "" : identity.getPrincipal().getName();
  }

  public boolean isManager() {
    return identity.hasRole("equipment-manager");
  }

  public boolean isSignedIn() {
    return !identity.isAnonymous();
  }

  /** For menus: whether the person works in one of these roles, or is the manager. */
  public boolean worksAs(String role) {
    return isManager() || identity.hasRole(role);
  }

  public boolean mayWorkAt(String field) {
    return isManager() || identity.hasRole("fitter") && scopes().contains("field:" + field);
  }

  public boolean mayFollow(String team) {
    return isManager() || identity.hasRole("coach") && scopes().contains("team:" + team);
  }

  /** The fields at which the person works as a fitter; the equipment manager works at all. */
  public Set<String> fields() {
    return identity.hasRole("fitter")
        ? scopes().stream()
            .filter(role -> role.startsWith("field:"))
            .map(role -> role.substring("field:".length()))
            .collect(Collectors.toUnmodifiableSet())
        : Set.of();
  }

  private Set<String> scopes() {
    return identity.getRoles();
  }
}

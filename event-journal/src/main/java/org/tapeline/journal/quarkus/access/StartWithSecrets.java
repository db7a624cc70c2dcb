package org.tapeline.journal.quarkus.access;

import io.quarkus.runtime.LaunchMode;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.config.Config;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.tapeline.journal.quarkus.Serving;

/**
 * A service that runs in earnest does not start without its keys and passwords: links that die with
 * the process, and sheets that nobody can check, would be noticed weeks later.
 */
@ApplicationScoped
public class StartWithSecrets {
  private static final String SESSIONS = "quarkus.http.auth.session.encryption-key";
  private static final String PROVIDED_SESSIONS =
      "quarkus.oidc.token-state-manager.encryption-secret";
  private static final String DATABASE = "quarkus.datasource.password";

  private final Config config;
  private final List<String> own;
  private final boolean provided;

  /**
   * @param own what this service needs beside what all do
   * @param provided whether people sign in at an identity provider
   */
  StartWithSecrets(
      Config config,
      @ConfigProperty(name = "tapeline.needed-secrets") Optional<List<String>> own,
      @ConfigProperty(name = "quarkus.oidc.tenant-enabled", defaultValue = "false")
          boolean provided) {
    this.config = config;
    this.own = own.orElse(List.of());
    this.provided = provided;
  }

  void look(@Observes @Priority(1) StartupEvent start, Serving serving) {
    if (LaunchMode.current() != LaunchMode.NORMAL || !serving.here()) {
      return;
    }
    List<String> names = new ArrayList<>(own);
    names.add(DATABASE);
    names.add(provided ? PROVIDED_SESSIONS : SESSIONS);
    List<String> wrong =
        NeededSecrets.wrong(names, name -> config.getOptionalValue(name, String.class));
    if (!wrong.isEmpty()) {
      throw new IllegalStateException(
          "Not started: "
              + String.join(" ", wrong)
              + " Set it in the environment to 32 or more random characters (openssl rand -hex 32),"
              + " the same for every copy and for as long as what it signed is to hold.");
    }
  }
}

package org.tapeline.notify.mail;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jboss.logging.Logger;
import org.tapeline.notify.mail.MailQueue.Claim;
import org.tapeline.notify.notice.DueBell;

/**
 * Sends due notices, each of its threads over a connection of its own. Woken when one is raised;
 * looks by itself every second for those whose wait is over or whose try was cut off. Platform
 * threads: the mail library blocks inside synchronized code, which pins a virtual thread on the
 * older JDKs.
 */
@ApplicationScoped
public class MailSender {
  /** After everything that the work needs has started. */
  private static final int LAST = Integer.MAX_VALUE;

  private static final Logger LOG = Logger.getLogger(MailSender.class);
  private static final Duration BETWEEN = Duration.ofSeconds(1);
  private static final Duration STOPPING = Duration.ofSeconds(5);

  private final MailQueue queue;
  private final DueBell bell;
  private final MailSettings settings;
  private final MailComposer composer;
  private final List<Thread> threads = new ArrayList<>();
  private volatile boolean stopping;

  MailSender(MailQueue queue, DueBell bell, MailSettings settings, MailComposer composer) {
    this.queue = queue;
    this.bell = bell;
    this.settings = settings;
    this.composer = composer;
  }

  void start(@Observes @Priority(LAST) StartupEvent event) {
    for (int i = 1; i <= settings.connections(); i++) {
      threads.add(Thread.ofPlatform().name("mail-" + i).daemon().start(this::run));
    }
  }

  /** A try that runs is let end, so that its outcome is noted. */
  void stop(@Observes ShutdownEvent event) throws InterruptedException {
    stopping = true;
    bell.ring();
    for (Thread thread : threads) {
      thread.join(STOPPING);
    }
  }

  private void run() {
    try (SmtpConnection connection = new SmtpConnection(settings, composer)) {
      while (!stopping) {
        long seen = bell.rings();
        if (!sendOne(connection)) {
          bell.awaitMoreThan(seen, BETWEEN);
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** True when there was one to send. */
  private boolean sendOne(SmtpConnection connection) {
    try {
      Optional<Claim> claim = queue.claim();
      claim.ifPresent(c -> deliver(c, connection));
      return claim.isPresent();
    } catch (RuntimeException e) {
      LOG.warnf("Due notices cannot be worked on, trying again: %s", e);
      return false;
    }
  }

  private void deliver(Claim claim, SmtpConnection connection) {
    if (claim.mail().isEmpty()) {
      queue.noteErased(claim);
      return;
    }
    SendOutcome outcome = connection.send(claim.mail().get());
    queue.note(claim, outcome);
    if (!(outcome instanceof SendOutcome.Taken)) {
      LOG.warnf("Notice %s, try %d: %s", claim.notice(), claim.attempt(), outcome);
    }
  }
}

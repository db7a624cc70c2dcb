package org.tapeline.notify.mail;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Mail settings for tests without a server. */
record Settings() implements MailSettings {
  @Override
  public String host() {
    return "127.0.0.1";
  }

  @Override
  public int port() {
    return 25;
  }

  @Override
  public Optional<String> username() {
    return Optional.empty();
  }

  @Override
  public Optional<String> password() {
    return Optional.empty();
  }

  @Override
  public Security security() {
    return Security.NONE;
  }

  @Override
  public String from() {
    return "Larkfield Valley helmets <notices@larkfield.example.org>";
  }

  @Override
  public String domain() {
    return "larkfield.example.org";
  }

  @Override
  public int connections() {
    return 1;
  }

  @Override
  public Duration timeout() {
    return Duration.ofSeconds(1);
  }

  @Override
  public Duration cutOffAfter() {
    return Duration.ofMinutes(1);
  }

  @Override
  public List<Duration> backOff() {
    return List.of(Duration.ofSeconds(1));
  }

  @Override
  public Duration giveUpAfter() {
    return Duration.ofHours(1);
  }

  @Override
  public int perSecond() {
    return 10;
  }

  @Override
  public Duration restWhenDown() {
    return Duration.ofSeconds(1);
  }
}

package org.tapeline.notify.text;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import org.tapeline.notify.channel.ChannelLimits;

/** The gateway for text messages, by configuration: whatever takes an HTTP request. */
@ConfigMapping(prefix = "tapeline.text")
public interface TextSettings extends ChannelLimits {
  /** Where messages go; absent: no text messages are sent. */
  Optional<String> url();

  @WithDefault("POST")
  String method();

  @WithDefault("json")
  Form form();

  /** Who the message is from, where the gateway wants that said. */
  Optional<String> from();

  /** The key that the gateway asks for, as it stands in its header. */
  Optional<String> key();

  /** Signs our requests, and the gateway's receipts; at least 32 bytes. */
  Optional<String> signingKey();

  Headers headers();

  Fields fields();

  Receipts receipts();

  /** How fields are written. */
  enum Form {
    JSON,
    FORM
  }

  /** Names of headers. */
  interface Headers {
    @WithDefault("Authorization")
    String key();

    @WithDefault("Idempotency-Key")
    String idempotency();

    @WithDefault("X-Timestamp")
    String timestamp();

    @WithDefault("X-Signature")
    String signature();
  }

  /** Names of the fields of a message, and of the gateway's id in its answer. */
  interface Fields {
    @WithDefault("to")
    String to();

    @WithDefault("from")
    String from();

    @WithDefault("body")
    String body();

    @WithDefault("reference")
    String reference();

    @WithDefault("id")
    String id();
  }

  /** How receipts look: names of fields and of their states. */
  interface Receipts {
    @WithDefault("id")
    String id();

    @WithDefault("reference")
    String reference();

    @WithDefault("status")
    String status();

    @WithDefault("delivered")
    Set<String> delivered();

    @WithDefault("failed,undelivered,rejected,expired")
    Set<String> failed();

    /** How far a time stamp may be off. */
    @WithDefault("PT5M")
    Duration window();
  }
}

package org.tapeline.stack.launch;

import java.io.IOException;
import java.net.http.HttpClient;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.tapeline.servers.LocalKafka;
import org.tapeline.servers.LocalPostgres;
import org.tapeline.stack.gateway.Gateway;
import org.tapeline.stack.gateway.GatewaySettings;
import org.tapeline.stack.mailbox.MailCatcher;
import org.tapeline.stack.mailbox.Mailbox;

/** The parts of the local stack: started in order of need, stopped in the reverse. */
final class Stack implements AutoCloseable {
  static final List<String> SERVICES = List.of("sizing", "fitting", "inventory", "notify");
  private static final String DEMO_USERS = "deploy/demo/users.properties";
  private static final ZoneId DEMO_ZONE = ZoneId.of("America/Denver");
  private static final Duration PATIENCE = Duration.ofSeconds(120);

  private final Path root;
  private final Path data;
  private final Ports ports;
  private final Progress progress;
  private final EarlierRun earlier;
  private final List<ServiceProcess> services = new ArrayList<>();
  private LocalPostgres postgres;
  private AutoCloseable kafka;
  private MailCatcher mail;
  private Gateway gateway;
  private final boolean brokerApart;
  private volatile boolean closing;

  /**
   * @param brokerApart whether Kafka runs as a process of its own instead of in this one
   */
  Stack(Path root, Path data, Ports ports, Progress progress, boolean brokerApart) {
    this.brokerApart = brokerApart;
    this.root = root;
    this.data = data;
    this.ports = ports;
    this.progress = progress;
    this.earlier = new EarlierRun(data);
  }

  void start() throws IOException, StartFailure {
    Mailbox mailbox = new Mailbox(data.resolve("mail"));
    startServers();
    progress.starting("mail", "catching mail on port " + ports.smtp());
    mail = MailCatcher.start("127.0.0.1", ports.smtp(), mailbox);
    progress.ready("mail", "SMTP on port " + ports.smtp());
    startServices();
    progress.starting("gateway", "one address for all");
    gateway =
        Gateway.start(
            new GatewaySettings(
                "127.0.0.1", ports.gateway(), addresses(), Optional.empty(), Optional.of(mailbox)));
    progress.ready("gateway", "http://localhost:" + ports.gateway());
  }

  private void startServers() throws IOException, StartFailure {
    progress.starting("PostgreSQL", "port " + ports.postgres());
    progress.starting("Kafka", "port " + ports.kafka());
    if (brokerApart) {
      kafka = BrokerProcess.start(data, ports);
    }
    CompletableFuture<Void> database = CompletableFuture.runAsync(this::startPostgres);
    CompletableFuture<Void> broker = CompletableFuture.runAsync(this::startKafka);
    try {
      CompletableFuture.allOf(database, broker).join();
    } catch (CompletionException e) {
      throw new StartFailure("A server did not start: " + e.getCause().getMessage());
    }
  }

  private void startPostgres() {
    try {
      postgres = LocalPostgres.keeping(data.resolve("postgres"), ports.postgres());
      for (String service : SERVICES) {
        postgres.createDatabase(service);
      }
    } catch (IOException | SQLException e) {
      throw new IllegalStateException("PostgreSQL: " + e.getMessage(), e);
    }
    progress.ready("PostgreSQL", "port " + ports.postgres());
  }

  private void startKafka() {
    try {
      if (kafka instanceof BrokerProcess broker) {
        broker.awaitReady();
      } else {
        kafka = LocalKafka.keeping(data.resolve("kafka"), ports.kafka(), ports.kafkaController());
      }
    } catch (IOException e) {
      throw new IllegalStateException("Kafka: " + e.getMessage(), e);
    }
    progress.ready("Kafka", "port " + ports.kafka());
  }

  private void startServices() throws IOException, StartFailure {
    Secrets secrets = new Secrets(data.resolve("secrets"));
    for (String name : SERVICES) {
      progress.starting(name, "port " + ports.of(name));
      services.add(
          ServiceProcess.start(name, ports.of(name), root, data, environment(name, secrets)));
      earlier.remember(processes());
    }
    awaitServices();
  }

  private List<Long> processes() {
    List<Long> pids = new ArrayList<>(services.stream().map(ServiceProcess::pid).toList());
    if (kafka instanceof BrokerProcess broker) {
      pids.add(broker.pid());
    }
    return pids;
  }

  private void awaitServices() throws StartFailure {
    HttpClient http = HttpClient.newHttpClient();
    List<ServiceProcess> waiting = new ArrayList<>(services);
    Instant until = Instant.now().plus(PATIENCE);
    while (!waiting.isEmpty()) {
      for (ServiceProcess service : List.copyOf(waiting)) {
        if (!service.alive() || Instant.now().isAfter(until)) {
          String what = service.alive() ? "is not ready" : "ended";
          progress.failed(service.name(), what);
          throw new StartFailure(
              service.name()
                  + "-service "
                  + what
                  + ". Its log ends with:\n"
                  + service.lastWords(25));
        }
        if (service.ready(http)) {
          waiting.remove(service);
          progress.ready(service.name(), "port " + ports.of(service.name()));
        }
      }
      rest();
    }
  }

  /** Says so when a service ends by itself later; the gateway tells those who call it. */
  void watch() {
    services.forEach(
        service ->
            service.whenEnded(
                () -> {
                  if (!closing) {
                    progress.failed(service.name(), "ended; its log: " + data.resolve("log"));
                  }
                }));
  }

  private static void rest() throws StartFailure {
    try {
      Thread.sleep(150);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new StartFailure("Interrupted");
    }
  }

  private Map<String, String> environment(String service, Secrets secrets) throws IOException {
    Map<String, String> environment = new HashMap<>();
    environment.put("QUARKUS_DATASOURCE_JDBC_URL", postgres.jdbcUrl(service));
    environment.put("QUARKUS_DATASOURCE_USERNAME", LocalPostgres.USER);
    environment.put("QUARKUS_DATASOURCE_PASSWORD", LocalPostgres.PASSWORD);
    environment.put("KAFKA_BOOTSTRAP_SERVERS", "127.0.0.1:" + ports.kafka());
    environment.put("QUARKUS_MAILER_HOST", "127.0.0.1");
    environment.put("QUARKUS_MAILER_PORT", Integer.toString(ports.smtp()));
    environment.put("TAPELINE_TEXT_URL", "http://127.0.0.1:" + ports.gateway() + "/mailbox/texts");
    environment.put("TAPELINE_TEXT_SIGNING_KEY", secrets.key("text"));
    environment.put("QUARKUS_HTTP_AUTH_SESSION_ENCRYPTION_KEY", secrets.key("session"));
    // Whoever tries the demo does not want to wait half an hour for what could be told together.
    environment.put("TAPELINE_CAUSES_WINDOW_AT_MOST", "PT10S");
    // Nor until tomorrow for what staff are told each morning.
    environment.put("TAPELINE_DIGEST_AT", digestHour(LocalTime.now(DEMO_ZONE)).toString());
    environment.put("TAPELINE_LINK_KEY", secrets.key("link"));
    environment.put("TAPELINE_SHEET_KEY", secrets.key("sheet"));
    environment.put("TAPELINE_PUBLIC_URL", "http://localhost:" + ports.gateway());
    environment.put(
        "SMALLRYE_CONFIG_LOCATIONS",
        root.resolve(System.getenv().getOrDefault("TAPELINE_USERS", DEMO_USERS)).toString());
    return environment;
  }

  /** Once the demo is loaded; late in the evening the last minute of the day. */
  static LocalTime digestHour(LocalTime now) {
    LocalTime later = now.plusMinutes(4).truncatedTo(ChronoUnit.MINUTES);
    return later.isBefore(now) ? LocalTime.of(23, 59) : later;
  }

  private Map<String, String> addresses() {
    Map<String, String> addresses = new HashMap<>();
    SERVICES.forEach(name -> addresses.put(name, "http://127.0.0.1:" + ports.of(name)));
    return addresses;
  }

  @Override
  public void close() {
    closing = true;
    quietly("gateway", gateway);
    services.forEach(ServiceProcess::askToStop);
    for (ServiceProcess service : services) {
      quietly(service.name(), () -> service.awaitStop(Duration.ofSeconds(15)));
    }
    quietly("mail", mail);
    quietly("Kafka", kafka);
    quietly("PostgreSQL", postgres);
    quietly("notes of processes", earlier::forget);
  }

  /** One part that does not stop well must not keep the others running. */
  private void quietly(String part, AutoCloseable closing) {
    if (closing == null) {
      return;
    }
    try {
      closing.close();
    } catch (Exception e) {
      progress.failed(part, "did not stop well: " + e.getMessage());
    }
  }

  /** A part that did not start, in words for the person at the terminal. */
  static final class StartFailure extends Exception {
    private static final long serialVersionUID = 1L;

    StartFailure(String message) {
      super(message);
    }
  }
}

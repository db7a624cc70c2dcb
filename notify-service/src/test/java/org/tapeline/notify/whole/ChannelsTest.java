package org.tapeline.notify.whole;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.UuidV7;
import org.tapeline.notify.whole.Peers.Event;
import org.tapeline.notify.whole.TextGateway.Answer;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@QuarkusTestResource(SmtpServer.class)
@QuarkusTestResource(TextGateway.class)
@Tag("servers")
@DisplayName("Channels, with a real mail server and a real text gateway")
class ChannelsTest {
  private static final String SATURDAY = "2035-09-15T15:00:00Z";
  private static final String SUNDAY = "2035-09-16T16:30:00Z";
  private static final Duration SOON = Duration.ofSeconds(40);
  private static final String HOOK = "/hooks/text";

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @ConfigProperty(name = "tapeline.text.signing-key")
  String signingKey;

  private final String phone = "+1500" + ThreadLocalRandom.current().nextInt(1_000_000, 9_999_999);
  private final String mail = "ana." + phone.substring(1) + "@families.example.org";
  private Peers peers;

  @BeforeEach
  void open() {
    peers = new Peers(kafka);
  }

  @AfterEach
  void close() {
    SmtpServer.up();
    TextGateway.up();
    TextGateway.letGo();
    peers.close();
  }

  @Test
  @DisplayName("reach who has a phone alone by a short, signed text message without a reason")
  void text() throws Exception {
    Refit refit = notWear(new Family("José").guardian("es", null, phone));
    TextGateway.Message message = onlyText();
    assertThat(message.body())
        .startsWith("No use el casco de José. Nuevo ajuste: sabado 15 de septiembre")
        .contains("/notify/n/")
        .doesNotContain("Quintanar", "prueba", "revisi");
    String path = message.body().substring(message.body().indexOf("/n/"));
    given().get(path).then().statusCode(200);

    String notice = onlyNotice(refit, "sent");
    assertThat(message.key()).isEqualTo(notice + "-1");
    TextGateway.Request request = TextGateway.requests(message.key()).getFirst();
    assertThat(request.login()).isEqualTo("Bearer key-of-tests");
    assertThat(request.signature()).isEqualTo(sign(request.timestamp(), request.body()));
    assertThat(Manager.json("/api/notices/" + notice).getList("tries.channel"))
        .containsExactly("text");
  }

  @Test
  @DisplayName("go on to the next when the mail address bounces, and remember it")
  void bounce() {
    Family family = new Family("Ana").guardian("en", "no address at all", phone);
    Refit refit = notWear(family);
    onlyText();
    String notice = onlyNotice(refit, "sent");
    JsonPath whole = Manager.json("/api/notices/" + notice);
    assertThat(whole.getList("tries.channel")).containsExactly("mail", "text");
    assertThat(whole.getList("tries.outcome")).containsExactly("refused", "taken");

    Refit second = new Refit(family.player);
    publish(second, second.opened(1), second.booked(2, SUNDAY));
    String next = onlyNotice(second, "sent");
    assertThat(Manager.json("/api/notices/" + next).getList("tries.channel"))
        .containsExactly("text");
  }

  @Test
  @DisplayName("send a message once although the answer never came: the key is the same")
  void answerLost() {
    TextGateway.next(Answer.takenButSlow());
    Refit refit = notWear(new Family("Leo").guardian("en", null, phone));
    String notice = onlyNotice(refit, "sent");
    TextGateway.letGo();
    assertThat(TextGateway.to(phone)).hasSize(1);
    assertThat(TextGateway.requests(notice + "-1")).hasSizeGreaterThanOrEqualTo(2);
    assertThat(Manager.json("/api/notices/" + notice).getList("tries.code"))
        .startsWith("timed-out");
  }

  @Test
  @DisplayName("wait as long as the gateway asks, and try again after its failures")
  void busyAndBroken() {
    TextGateway.next(Answer.of(500), Answer.busy(1));
    Instant before = Instant.now();
    Refit refit = notWear(new Family("Kai").guardian("en", null, phone));
    String notice = onlyNotice(refit, "sent");
    assertThat(onlyText().at()).isAfter(before.plusSeconds(1));
    assertThat(Manager.json("/api/notices/" + notice).getList("tries.code"))
        .startsWith("500", "429");
  }

  @Test
  @DisplayName("are exhausted when the gateway refuses for good: then nobody was reached")
  void refused() {
    TextGateway.next(Answer.of(422));
    Refit refit = notWear(new Family("Noa").guardian("en", null, phone));
    onlyNotice(refit, "undeliverable");
    assertThat(notices(refit).getString("notices[0].why")).isEqualTo("message-refused");
    assertThat(TextGateway.to(phone)).isEmpty();
  }

  @Test
  @DisplayName("lose nothing in an outage, drain at the rate, do not wear first, each once")
  void outage() {
    TextGateway.down();
    List<Refit> refits = new ArrayList<>();
    List<String> phones = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      String number = phone.substring(0, 9) + String.format("%03d", i);
      phones.add(number);
      Family family = new Family("Uma").guardian("en", null, number);
      family.details().forEach(this::publish);
      Refit refit = new Refit(family.player);
      refits.add(refit);
      publish(refit, refit.opened(1, i < 20 ? "soon" : "do-not-wear"), refit.booked(2, SATURDAY));
    }
    await().atMost(SOON).until(() -> refits.stream().allMatch(r -> states(r).contains("raised")));
    Refit overtaken = refits.getFirst();
    publish(overtaken, overtaken.booked(3, SUNDAY), overtaken.closed(4, "fitted"));
    await().atMost(SOON).until(() -> states(overtaken).contains("cancelled"));

    TextGateway.up();
    List<Refit> others = refits.subList(1, refits.size());
    await().atMost(SOON).until(() -> others.stream().allMatch(r -> states(r).contains("sent")));
    List<TextGateway.Message> came =
        phones.subList(1, phones.size()).stream()
            .flatMap(number -> TextGateway.to(number).stream())
            .sorted(Comparator.comparing(TextGateway.Message::at))
            .toList();
    // On a slow machine the date may have come as a notice of its own: each notice comes once.
    assertThat(came.stream().map(TextGateway.Message::key)).doesNotHaveDuplicates();
    assertThat(came.stream().map(TextGateway.Message::to).distinct()).hasSize(29);
    long urgentAmongFirst =
        came.subList(0, 14).stream().filter(m -> m.body().startsWith("Do not wear")).count();
    assertThat(urgentAmongFirst).isGreaterThanOrEqualTo(9);
  }

  @Test
  @DisplayName("believe receipts that are signed, in time and new, in any order")
  void receipts() throws Exception {
    Family family = new Family("Ema").guardian("en", null, phone);
    Refit texted = notWear(family);
    String notice = onlyNotice(texted, "sent");
    String failed = receipt(notice, "failed");
    long now = Instant.now().getEpochSecond();

    hook(failed, now, "00".repeat(32)).then().statusCode(401);
    hook(failed, now - 301, sign(now - 301, failed)).then().statusCode(401);
    given().body(failed).post(HOOK).then().statusCode(401);
    String nobody = receipt(UuidV7.next().toString(), "failed");
    hook(nobody, now, sign(now, nobody)).then().statusCode(404);
    hook("{}", now, sign(now, "{}")).then().statusCode(400);
    assertThat(states(texted)).containsExactly("sent");

    hook(failed, now, sign(now, failed)).then().statusCode(204);
    assertThat(states(texted)).containsExactly("undeliverable");
    assertThat(notices(texted).getString("notices[0].why")).isEqualTo("not-delivered");
    hook(failed, now, sign(now, failed)).then().statusCode(409);
    hook(failed, now + 1, sign(now + 1, failed)).then().statusCode(204);
    String delivered = "{\"id\":\"gw-" + notice + "-1\",\"status\":\"delivered\"}";
    hook(delivered, now, sign(now, delivered)).then().statusCode(204);
    hook(failed, now + 2, sign(now + 2, failed)).then().statusCode(204);
    assertThat(states(texted)).containsExactly("sent");
  }

  @Test
  @DisplayName("go on to mail when a text message did not arrive after all")
  void notDelivered() throws Exception {
    Family family = new Family("Pia").guardian("en", "no address either", phone);
    onlyNotice(notWear(family), "sent");
    // The mail address bounced, so text comes first now, and mail is what is left.
    Refit second = notWear(family, SUNDAY);
    String notice = onlyNotice(second, "sent");
    String failed = receipt(notice, "failed");
    long now = Instant.now().getEpochSecond();
    hook(failed, now, sign(now, failed)).then().statusCode(204);
    onlyNotice(second, "undeliverable");
    assertThat(Manager.json("/api/notices/" + notice).getList("tries.channel"))
        .containsExactly("text", "mail");
  }

  @Test
  @DisplayName("let news be turned off with one click, keep the proof, and send what is safety")
  void turnOff() throws Exception {
    Family family = new Family("Zoe").guardian("es", mail);
    Refit refit = notWear(family);
    assertThat(header(mailsTo(1).getFirst())).isNull();
    assertThat(ReceivedMail.of(mailsTo(1).getFirst()).plain())
        .contains("Es sobre la seguridad. Por eso llega siempre.");
    publish(refit, refit.closed(3, "fitted"));
    MimeMessage news = mailsTo(2).get(1);
    String path = header(news).replaceAll(".*(/unsubscribe/[^>]*)>", "$1");
    assertThat(ReceivedMail.of(news).plain())
        .contains(path)
        .doesNotContain("Por eso llega siempre");

    assertThat(given().get(path).then().statusCode(200).extract().asString())
        .contains("No recibirlos más", "<button");
    Refit second = notWear(family, SUNDAY);
    mailsTo(3);
    for (int i = 0; i < 2; i++) {
      given()
          .redirects()
          .follow(false)
          .formParam("List-Unsubscribe", "One-Click")
          .post(path)
          .then()
          .statusCode(200);
    }
    given().multiPart("List-Unsubscribe", "One-Click").post(path).then().statusCode(200);
    publish(second, second.closed(3, "fitted"));
    await().atMost(SOON).until(() -> states(second).contains("cancelled"));
    Refit third = notWear(family);
    onlyNotice(third, "sent");
    assertThat(mailsTo(4)).hasSize(4);
    String forged = path.substring(0, path.length() - 3) + "AAA";
    given().get(forged).then().statusCode(404);
    given().formParam("List-Unsubscribe", "One-Click").post(forged).then().statusCode(404);
  }

  private static String header(MimeMessage message) throws MessagingException {
    return message.getHeader("List-Unsubscribe", null);
  }

  private List<MimeMessage> mailsTo(int expected) {
    await().atMost(SOON).until(() -> SmtpServer.to(mail).size() >= expected);
    return SmtpServer.to(mail);
  }

  private Refit notWear(Family family) {
    return notWear(family, SATURDAY);
  }

  private Refit notWear(Family family, String startsAt) {
    Refit refit = new Refit(family.player);
    // The people last: then the date is known however slow the machine is.
    publish(refit, refit.opened(1), refit.booked(2, startsAt));
    family.details().forEach(this::publish);
    return refit;
  }

  private TextGateway.Message onlyText() {
    await().atMost(SOON).until(() -> !TextGateway.to(phone).isEmpty());
    assertThat(TextGateway.to(phone)).hasSize(1);
    return TextGateway.to(phone).getFirst();
  }

  private static String onlyNotice(Refit refit, String state) {
    await().atMost(SOON).until(() -> states(refit).equals(List.of(state)));
    return notices(refit).getString("notices[0].notice");
  }

  private static String receipt(String notice, String status) {
    return "{\"reference\":\"" + notice + "-1\",\"status\":\"" + status + "\"}";
  }

  private static Response hook(String body, long seconds, String signature) {
    return given()
        .contentType("application/json")
        .header("X-Timestamp", Long.toString(seconds))
        .header("X-Signature", signature)
        .body(body)
        .post(HOOK);
  }

  private String sign(long seconds, String body) throws Exception {
    return sign(Long.toString(seconds), body.getBytes(StandardCharsets.UTF_8));
  }

  private String sign(String seconds, byte[] body) throws Exception {
    Mac mac = Mac.getInstance("HmacSHA256");
    mac.init(new SecretKeySpec(signingKey.getBytes(StandardCharsets.UTF_8), "HmacSHA256"));
    mac.update((seconds + ".").getBytes(StandardCharsets.US_ASCII));
    return HexFormat.of().formatHex(mac.doFinal(body));
  }

  private static List<String> states(Refit refit) {
    return notices(refit).getList("notices.state");
  }

  private static JsonPath notices(Refit refit) {
    return Manager.json("/api/notices?refitCase=" + refit.id);
  }

  private void publish(Event event) {
    peers.send(event, UUID.randomUUID());
  }

  private void publish(Refit refit, Event... events) {
    peers.sendTwice(refit.correlationId, events);
  }
}

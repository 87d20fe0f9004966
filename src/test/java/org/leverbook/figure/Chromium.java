package org.leverbook.figure;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * A real Chromium without a window, spoken to by its remote debugging protocol. Where one is, the
 * environment variable {@code LEVERBOOK_BROWSER} or the property {@code leverbook.browser} tells.
 */
final class Chromium implements AutoCloseable {

  private static final int SECONDS = 60;

  private final ObjectMapper json = new ObjectMapper();
  private final Map<Integer, CompletableFuture<JsonNode>> asked = new ConcurrentHashMap<>();
  private final AtomicInteger last = new AtomicInteger();
  private final Process process;
  private final WebSocket socket;

  private Chromium(Process process, HttpClient client, URI page) throws Exception {
    this.process = process;
    this.socket =
        client.newWebSocketBuilder().buildAsync(page, new Answers()).get(SECONDS, TimeUnit.SECONDS);
  }

  /** The browser that the environment names. */
  static Optional<String> named() {
    return Optional.ofNullable(
            System.getProperty("leverbook.browser", System.getenv("LEVERBOOK_BROWSER")))
        .filter(name -> !name.isBlank());
  }

  /** Starts it on a page, in a folder of its own. */
  static Chromium open(String browser, Path folder, Path page) throws Exception {
    Process process =
        new ProcessBuilder(
                List.of(
                    browser,
                    "--headless",
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-dev-shm-usage",
                    "--remote-debugging-port=0",
                    "--user-data-dir=" + folder,
                    page.toUri().toString()))
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("browser.log").toFile())
            .start();
    try {
      Path told = folder.resolve("DevToolsActivePort");
      long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(SECONDS);
      HttpClient client = HttpClient.newHttpClient();
      while (System.nanoTime() < until) {
        if (Files.exists(told) && !Files.readAllLines(told).isEmpty()) {
          Optional<URI> target = target(client, Files.readAllLines(told).get(0), page);
          if (target.isPresent()) {
            return new Chromium(process, client, target.get());
          }
        }
        Thread.sleep(50);
      }
      throw new AssertionError(
          "The browser did not start: " + Files.readString(folder.resolve("browser.log")));
    } catch (Exception | AssertionError e) {
      process.destroyForcibly();
      throw e;
    }
  }

  private static Optional<URI> target(HttpClient client, String port, Path page)
      throws IOException, InterruptedException {
    URI list = URI.create("http://127.0.0.1:" + port + "/json/list");
    String answer =
        client
            .send(HttpRequest.newBuilder(list).build(), HttpResponse.BodyHandlers.ofString())
            .body();
    for (JsonNode target : new ObjectMapper().readTree(answer)) {
      if (target.path("url").asText().endsWith(page.getFileName().toString())) {
        return Optional.of(URI.create(target.path("webSocketDebuggerUrl").asText()));
      }
    }
    return Optional.empty();
  }

  /** Asks one thing of the protocol. */
  JsonNode ask(String method, String parameters) throws Exception {
    int id = last.incrementAndGet();
    CompletableFuture<JsonNode> answer = new CompletableFuture<>();
    asked.put(id, answer);
    ObjectNode message = json.createObjectNode();
    message.put("id", id).put("method", method).set("params", json.readTree(parameters));
    socket.sendText(json.writeValueAsString(message), true).get(SECONDS, TimeUnit.SECONDS);
    JsonNode got = answer.get(SECONDS, TimeUnit.SECONDS);
    if (got.has("error")) {
      throw new AssertionError(method + ": " + got.get("error"));
    }
    return got.path("result");
  }

  /** The value of an expression on the page. */
  String value(String expression) throws Exception {
    ObjectNode asking = json.createObjectNode();
    asking.put("expression", expression).put("returnByValue", true).put("awaitPromise", true);
    JsonNode got = ask("Runtime.evaluate", json.writeValueAsString(asking));
    if (got.has("exceptionDetails")) {
      throw new AssertionError(expression + ": " + got.get("exceptionDetails"));
    }
    return got.path("result").path("value").asText();
  }

  /** Presses and lets go of a real key. */
  void press(String key, int code, String text) throws Exception {
    String common =
        "\"key\":\"" + key + "\",\"windowsVirtualKeyCode\":" + code + ",\"text\":\"" + text + "\"}";
    String down = text.isEmpty() ? "rawKeyDown" : "keyDown";
    ask("Input.dispatchKeyEvent", "{\"type\":\"" + down + "\"," + common);
    ask("Input.dispatchKeyEvent", "{\"type\":\"keyUp\"," + common);
  }

  /** What is to be seen, as PNG. */
  byte[] seen() throws Exception {
    return Base64.getDecoder().decode(ask("Page.captureScreenshot", "{}").path("data").asText());
  }

  @Override
  public void close() {
    socket.abort();
    process.destroy();
    process.onExit().completeOnTimeout(process, 10, TimeUnit.SECONDS).join();
    process.destroyForcibly();
  }

  /** Puts answers together that come in pieces. */
  private final class Answers implements WebSocket.Listener {

    private final StringBuilder text = new StringBuilder();

    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence data, boolean end) {
      text.append(data);
      if (end) {
        try {
          JsonNode message = json.readTree(text.toString());
          CompletableFuture<JsonNode> answer = asked.remove(message.path("id").asInt());
          if (answer != null) {
            answer.complete(message);
          }
        } catch (IOException e) {
          asked.values().forEach(answer -> answer.completeExceptionally(e));
        }
        text.setLength(0);
      }
      from.request(1);
      return null;
    }
  }
}

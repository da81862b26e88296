package org.ripewood;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.Select;

/** A headless Chromium from the path, used as a person would use it, with scripts of pages off. */
final class Browser implements AutoCloseable {

    static final Dimension DESK = new Dimension(1280, 900);
    static final Dimension PHONE = new Dimension(390, 844);

    static final Dimension NARROW = new Dimension(320, 720);
    static final List<Dimension> SIZES = List.of(DESK, PHONE, NARROW);

    /**
     * Columns of text that are narrower cannot be read (from memory: 45 to 75 letters are good). A
     * phone has nothing beside its text, not even in tables; a desk has tables with many columns.
     */
    private static final int LETTERS_IN_A_LINE = 12;

    private static final int LETTERS_ON_A_PHONE = 20;
    private static final String TABLES = ", td, th, dt";

    /** Their letters are larger than those of the text. */
    private static final String HEADINGS = ", h1, h2, h3";

    private static final List<String> STANDARDS =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");

    private final ChromeDriver driver;
    private final RunningJar service;

    Browser(RunningJar service) throws IOException {
        this.service = service;
        var options = new ChromeOptions();
        options.setBinary(onPath("chromium").toFile());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--disable-dev-shm-usage",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--hide-scrollbars",
                "--user-data-dir=" + Files.createTempDirectory("browser"));
        var driverService =
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(onPath("chromedriver").toFile())
                        .build();
        driver = new ChromeDriver(driverService, options);
        driver.manage().timeouts().pageLoadTimeout(Duration.ofSeconds(60));
        driver.manage().window().setSize(DESK);
    }

    void resize(Dimension size) {
        driver.manage().window().setSize(size);
    }

    /** Asks for dark pages, as the setting of a reader's own device does, or for light ones. */
    void dark(boolean asked) {
        var scheme = Map.of("name", "prefers-color-scheme", "value", asked ? "dark" : "light");
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", List.of(scheme)));
    }

    /** Opens an address of the service and looks the page over. */
    void open(String path) {
        driver.get(service.at(path));
        lookOver();
    }

    /** Opens an address of the service, of a kind that was looked over already. */
    void visit(String path) {
        driver.get(service.at(path));
    }

    /** Follows the first visible link with this text and looks the page over. */
    void follow(String text) {
        press(find("//a[contains(normalize-space(.), '" + text + "')]"));
    }

    /** Presses the first button with this text and looks over the page that comes. */
    void pressButton(String text) {
        press(find("//button[normalize-space()='" + text + "']"));
    }

    /** Opens a folded part by its summary. */
    void unfold(String summary) {
        var found = find("//summary[contains(normalize-space(.), '" + summary + "')]");
        found.click();
    }

    private void press(WebElement element) {
        driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", element);
        element.click();
        lookOver();
    }

    /** Types into the visible field with this label, replacing what stands there. */
    void type(String label, String text) {
        var field = field(label);
        if ("date".equals(field.getAttribute("type"))) {
            // Keyboards type dates in the order of a locale; the value is the same in all of them.
            driver.executeScript("arguments[0].value = arguments[1]", field, text);
            return;
        }
        field.clear();
        field.sendKeys(text);
    }

    /** Chooses from the visible list with this label. */
    void choose(String label, String option) {
        new Select(field(label)).selectByVisibleText(option);
    }

    private WebElement field(String label) {
        for (var found :
                driver.findElements(
                        By.xpath("//label[starts-with(normalize-space(), '" + label + "')]"))) {
            if (found.isDisplayed()) {
                return driver.findElement(By.id(found.getAttribute("for")));
            }
        }
        throw new AssertionError("no visible field \"" + label + "\" on " + where() + text());
    }

    private WebElement find(String xpath) {
        return driver.findElements(By.xpath(xpath)).stream()
                .filter(WebElement::isDisplayed)
                .findFirst()
                .orElseThrow(
                        () ->
                                new AssertionError(
                                        "no visible " + xpath + " on " + where() + text()));
    }

    /** What a reader sees of the page: the driver would leave out details that a style unfolds. */
    String text() {
        return String.valueOf(
                driver.executeScript("return document.querySelector('main').innerText"));
    }

    String where() {
        return driver.getCurrentUrl();
    }

    void picture(Path file) throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.write(file, driver.getScreenshotAs(OutputType.BYTES));
    }

    /** The whole page, however long. */
    void longPicture(Path file) throws IOException {
        var before = driver.manage().window().getSize();
        var height =
                (Number) driver.executeScript("return document.documentElement.scrollHeight + 140");
        driver.manage().window().setSize(new Dimension(before.width, height.intValue()));
        picture(file);
        driver.manage().window().setSize(before);
    }

    /** Signs out by taking the cookies away. */
    void forget() {
        driver.get(service.at("/help"));
        driver.manage().deleteAllCookies();
    }

    /** Addresses on the page that begin so and go on with a code or a number, each once. */
    List<String> links(String start) {
        return driver
                .findElements(By.xpath("//main//a[starts-with(@href, '" + start + "')]"))
                .stream()
                .map(link -> link.getDomAttribute("href"))
                .filter(href -> href.matches(java.util.regex.Pattern.quote(start) + "[\\w/-]+"))
                .filter(href -> !href.matches("/trees/(new|left)"))
                .distinct()
                .toList();
    }

    String first(String start) {
        return links(start).stream()
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + start + " on " + where() + text()));
    }

    /**
     * Fails when the page is wider than the window, when a text of some length stands in lines of
     * fewer than twelve letters (on a phone twenty, in tables too), or when it is longer than a
     * page of its kind should be.
     */
    void measure() {
        var wide =
                (Number)
                        driver.executeScript(
                                "return document.documentElement.scrollWidth - window.innerWidth");
        assertThat(wide.intValue()).as("overflow of %s %s", where(), size()).isLessThan(2);
        assertThat(narrowTexts()).as("texts in narrow columns on %s %s", where(), size()).isEmpty();
        var height = (Number) driver.executeScript("return document.body.scrollHeight");
        var path = java.net.URI.create(where()).getPath();
        assertThat(height.intValue())
                .as("height of %s %s", where(), size())
                .isLessThanOrEqualTo(PageHeights.most(path, size().width));
    }

    private List<Object> narrowTexts() {
        var found = new ArrayList<Object>(narrowTexts(LETTERS_IN_A_LINE, TABLES));
        if (size().width <= PHONE.width) {
            found.addAll(narrowTexts(LETTERS_ON_A_PHONE, HEADINGS));
        }
        return found;
    }

    private List<?> narrowTexts(int letters, String passed) {
        return (List<?>) driver.executeScript(NARROW_TEXTS, letters, passed);
    }

    private Dimension size() {
        return driver.manage().window().getSize();
    }

    /**
     * Lines are told apart by where they begin, and the last is seldom full; hidden texts and
     * pictures are passed over, and what else is told.
     */
    private static final String NARROW_TEXTS =
            """
            const least = arguments[0], found = [];
            const passed = 'svg, .hidden, option' + arguments[1];
            const walk = document.createTreeWalker(
                document.querySelector('main'), NodeFilter.SHOW_TEXT);
            const range = document.createRange();
            for (let node = walk.nextNode(); node; node = walk.nextNode()) {
              const letters = node.textContent.replace(/\\s+/g, ' ').trim().length;
              if (letters < 2 * least || node.parentElement.closest(passed)) {
                continue;
              }
              range.selectNodeContents(node);
              const boxes = [...range.getClientRects()].filter(box => box.width > 0);
              const lines = new Set(boxes.map(box => Math.round(box.top))).size;
              if (lines > 2 && letters / (lines - 1) < least) {
                found.push(Math.round(letters / (lines - 1)) + ': '
                    + node.textContent.trim().slice(0, 60));
              }
            }
            return found;
            """;

    /** Fails when axe finds a violation, or the page cannot be read as it stands. */
    private void lookOver() {
        measure();
        var found = new AxeBuilder().withTags(STANDARDS).analyze(driver).getViolations();
        assertThat(found)
                .as("axe on %s", where())
                .extracting(rule -> rule.getId() + ": " + rule.getNodes())
                .isEmpty();
    }

    private static Path onPath(String program) {
        for (var folder : System.getenv("PATH").split(java.io.File.pathSeparator, -1)) {
            var candidate = Path.of(folder, program);
            if (Files.isExecutable(candidate)) {
                return candidate;
            }
        }
        throw new IllegalStateException(
                "the browser test needs \"%s\" on the path".formatted(program)
                        + " (Debian: apt-get install chromium chromium-driver)");
    }

    @Override
    public void close() {
        driver.quit();
    }
}

package lyewright.web;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What stands around every page.
 *
 * @param title of the page, without the application's name
 * @param section which part it belongs to; empty for pages outside, such as the first start
 * @param workshop the workshop's name; empty before there is one
 * @param demo whether it is the demo workshop
 * @param notices what has just been done
 * @param styles further stylesheets beside the common ones, as names below static
 * @param scripts further scripts, as names below static
 */
public record Frame(
        String title,
        Optional<Section> section,
        Optional<String> workshop,
        boolean demo,
        List<Notice> notices,
        List<String> styles,
        List<String> scripts) {

    /** Copies its lists. */
    public Frame {
        notices = List.copyOf(notices);
        styles = List.copyOf(styles);
        scripts = List.copyOf(scripts);
    }

    /** A page outside any workshop. */
    public static Frame outside(String title) {
        return new Frame(title, Optional.empty(), Optional.empty(), false, List.of(), List.of(), List.of());
    }

    /** The same with something to tell. */
    public Frame telling(Notice notice) {
        return new Frame(title, section, workshop, demo, List.of(notice), styles, scripts);
    }

    /** The same with stylesheets and scripts of its own. */
    public Frame with(List<String> ownStyles, List<String> ownScripts) {
        return new Frame(title, section, workshop, demo, notices, ownStyles, ownScripts);
    }

    /** The same with a script of its own; it runs once the page is there. */
    public Frame withScript(String script) {
        return new Frame(title, section, workshop, demo, notices, styles, List.of(script));
    }

    /** The same with a stylesheet of its own. */
    public Frame withStyle(String style) {
        return new Frame(title, section, workshop, demo, notices, List.of(style), scripts);
    }

    /** The parts the header leads to; what a workshop is set to is for its makers. */
    public List<Section> sections() {
        return Stream.of(Section.values())
                .filter(part -> part != Section.SETTINGS || !asHelper())
                .toList();
    }

    /** Who asks for the page, at a device that was let in; empty at the computer itself. */
    public String who() {
        return Visitor.now().device().map(device -> device.person().name()).orElse("");
    }

    /** Whether what only a maker does is left out. */
    public boolean asHelper() {
        return !Visitor.now().isMaker();
    }

    /** Whether the page belongs to a part. */
    public boolean in(Section other) {
        return section.filter(other::equals).isPresent();
    }

    /** The address of a file below static; it changes when the file does. */
    public String file(String name) {
        return StaticFiles.address(name);
    }
}

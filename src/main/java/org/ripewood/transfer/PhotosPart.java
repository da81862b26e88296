package org.ripewood.transfer;

import java.io.ByteArrayInputStream;
import java.util.Map;
import org.ripewood.photos.NewPhoto;
import org.ripewood.photos.Viewpoint;
import org.ripewood.platform.problems.Suggestion;

/** Reads the part {@code photos} of a tree's file. */
final class PhotosPart {

    private final Rooms rooms;
    private final Script script;
    private final Ref tree;
    private final Map<String, byte[]> pictures;

    /**
     * @param pictures by the name they have in the folder of photos
     */
    PhotosPart(Rooms rooms, Script script, Ref tree, Map<String, byte[]> pictures) {
        this.rooms = rooms;
        this.script = script;
        this.tree = tree;
        this.pictures = pictures;
    }

    void read(Entry entry) {
        var by = script.by(entry);
        var day = entry.day("day");
        var view = entry.word("view", Viewpoint.class);
        var caption = entry.textOrNull("caption");
        var shown = entry.textOrNull("wound");
        var wound =
                shown == null
                        ? null
                        : script.codes()
                                .mention(tree.part(Ref.Kind.WOUND, shown), entry.place(), "wound");
        var file = entry.text("file");
        var picture = pictures.get(file);
        if (picture == null) {
            entry.fault(
                    "file",
                    "there is no picture %s.%s"
                            .formatted(file, Suggestion.maybe(pictures.keySet(), file)));
            picture = new byte[0];
        }
        var bytes = picture;
        script.add(
                entry,
                day,
                register -> {
                    var said =
                            new NewPhoto(
                                    day,
                                    view,
                                    caption,
                                    wound == null ? null : register.id(wound),
                                    null);
                    rooms.photos.add(
                            register.actor(by),
                            register.id(tree),
                            rooms.checked(said),
                            new ByteArrayInputStream(bytes));
                });
    }
}

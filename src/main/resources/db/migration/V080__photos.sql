-- Photos of trees. Their bytes lie in the store of photos under keys of their own; what is said of
-- them, and that one was taken away, is here.
create sequence photo_seq increment by 50;

create table photo (
    id bigint primary key,
    version bigint not null,
    tree_id bigint not null references tree (id),
    taken_on date not null,
    seen_from varchar(20) not null,
    caption varchar(500),
    wound_id bigint references wound (id),
    step_id bigint references step (id),
    file_key varchar(32),
    thumbnail_key varchar(32),
    width_px integer not null,
    height_px integer not null,
    byte_count bigint not null,
    sha_256 varchar(64) not null,
    by_id bigint not null references person (id),
    recorded_at timestamp(6) with time zone not null,
    removed_by_id bigint references person (id),
    removed_at timestamp(6) with time zone,
    constraint photo_file_once unique (file_key),
    constraint photo_thumbnail_once unique (thumbnail_key),
    -- What is there has its files, what was taken away has none and says by whom.
    constraint photo_there_or_marked check (
        (removed_at is null and removed_by_id is null
            and file_key is not null and thumbnail_key is not null)
        or (removed_at is not null and removed_by_id is not null
            and file_key is null and thumbnail_key is null))
);

create index photo_of_tree on photo (tree_id, taken_on);
create index photo_of_wound on photo (wound_id);
create index photo_of_step on photo (step_id);
create index photo_by on photo (by_id, recorded_at);

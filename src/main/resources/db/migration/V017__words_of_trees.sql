-- What was said of a tree after it was entered: where it came from, and its note. The latest of each kind
-- counts, and stays whose it is; what came before stays too.
create sequence tree_words_seq increment by 50;

create table tree_words (
    id bigint primary key,
    tree_id bigint not null references tree (id),
    kind varchar(20) not null,
    words varchar(2000),
    by_id bigint not null references person (id),
    recorded_at timestamp(6) with time zone not null,
    constraint tree_words_kind_known check (kind in ('ORIGIN', 'NOTE'))
);

create index tree_words_of_tree on tree_words (tree_id, id);

-- How often that was changed, so that the tree's version is raised by it.
alter table tree add column words_revision bigint default 0 not null;

-- The owner's own words around a notice about finders; empty stands for the words the product brings.
ALTER TABLE shop ADD COLUMN notice_subject TEXT NOT NULL DEFAULT '' CHECK (length(notice_subject) <= 120);
ALTER TABLE shop ADD COLUMN notice_text    TEXT NOT NULL DEFAULT '' CHECK (length(notice_text) <= 4000);

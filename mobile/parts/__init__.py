"""Building blocks shared by screens: dumb, frozen inputs, plain values; no session, no store.

Colours are tokens of `mobile.theme` (`t.TEXT`, ...): names in the page's theme, so parts need no look
and no argument for it; `t.dress(page, look)` changes all. Lower case is a function that gives a
control; capitals are components (they take `key=`). Drawings are memo components: give them frozen
values and they are not drawn again. `text_ratio` is the phone's text size (1 to 2); from 1.5 rows
stand under each other. Widths and heights of drawings are dp, from the page: a screen's inside is
`page.width - 2 * t.MARGIN`, a board's inside 35 less.

| file | what it holds |
|---|---|
| tap | `Action(words, do, small, key)` a button's words and verb, plain or async (no `do`: can't be tapped) · `grow(control, share)` take the room left, `grow_loosely` at most what it needs · `spread(controls)` both ends of a line, under each other where they don't fit · `surface(content, fill, edge, radius, padding)`, `tap(face, do, label, chosen=, key=)` make any face a button |
| buttons | `main_button(action, size, height, side)` the one amber · `second_button(action, size, height, width)` · `outline_button(action, sign)` How?, Leave (`sign="back"`), New mix · `thumb_block(upper, main, earlier, later, text_ratio)`, `pair(actions, text_ratio)` its upper two where they scroll · `option(action, detail, drawing, main, text_ratio)` one answer of several as a board · `stack_or_row(controls, text_ratio)` |
| page | `header(title, small, right, size)` · `screen(rows, pinned, key)` scrolls under the pinned action · `standing(rows, foot, scrolls, key)` fills without scrolling · `inset(control)` as far in as a board's inside |
| boards | `board(controls, state, spacing, key)` state "", "good", "caution" · `BoardToCome(name, small, value)` · `head(name, small, right, size)` what on the left, answer on the right · `answer(words, state, size)` · `Fact(value, caption, state)`, `fact(fact, size, align)`, `facts(facts, text_ratio)` · `Row(name, small, value, under, state)`, `row(line, do, lead, text_ratio)`, `rows(lines)` · `tile(sign, name, small, do, key)`, `tiles(several, width, text_ratio)` |
| fields | `Field(name, label, value, error, number)` label with its unit · `Fields(fields, on_change(name, text), on_done)` a column; Enter goes on · `EntryField(field, on_change(text), on_enter, ref)` one |
| keypad | `Keypad(action, on_key(sign), width, height, text_ratio)`, `pad_height(page_height)` · `Typing(text, fresh)`, `press(typing, sign)` what stands there after a key |
| figure | `BigFigure(text, unit, width, most, caret)` most 176 (`t.READS`), 144 (`t.TYPED`), 86 (`t.CAN`) |
| chip, swatches | `TwoLight(day, lamp, words, size)` empty colour: not known · `Swatches(light, typed, wrong, choose)` a look tapped or typed |
| bucket | `Layer(low_ratio, high_ratio, color, state, label)` state "in", "pour now", "to come" · `Cup(high, labels, width)` · `Bucket(layers, words, cup)` |
| gauge | `Reading(target_g, low_g, high_g, reads_g, color, target)` · `OverGauge(reading, words, width)` |
| can | `CanFace(number, color, level_ratio)` · `Can(face, words, large)` 54 x 64 or 86 x 116 |
| waits | `Strip(finished_s, ready_s, label_s, late_s)` · `axis_of(strips, now_s) -> Axis` · `Clock(axis, now_s, width)` one a screen · `Tick(at_s, words)` · `TimeAxis(clock, ticks, now_words)` · `WaitStrip(strip, clock, words, last)` last: the bob hangs there · `wait_fact(value, pattern, caption)` pattern "label", "drying", "ready", "too late" |
| elevation | `Dimensions(width, left, right, spoken)` · `Elevation(wall, says, (width, height), color)` a `core.walls.shape.Wall` to scale |
| schedule | `Stop(key, name, state, wait, at, day, ends_visit)` state "done", "now", "to come", "hand-over" · `schedule(stops, on_tap(key), text_ratio)` |
| sheet | `HowStep(name, inputs, value, source)` · `How(title, small, steps, answers, note)` · `how_sheet(how, on_close, page_height)` for `ft.use_dialog` |
| notices | `told(words, undo, above)` snack bar · `notice(words, actions, state)` bar at the top · `caution(title, lines, decides, read)` · `empty(first, small, main, demo)` · `Busy(words, done_ratio, on_cancel)` |
| choice | `segmented(options, chosen, on_choose(key), text_ratio)` Day / Lamp · `pills(at, of, words)` part n of m |
| bar | `Place(words, sign, address)` · `PlaceBar(places, current, width, text_ratio)` · `PlaceRail(places, current)` · `LockedLine(title, small)` |
| icons | `icon(name, size, color, heavy)`; names are the keys of `ICONS` |
| drawing, measure | stripes, paths and `spoken(words, shapes, width, height)` for a drawing of one's own · `text_width(words, size)`, `unparted(words)` |
"""  # noqa: E501  a table's row is one line

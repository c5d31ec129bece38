/* pdf_case.c - faces, folder, pages and reading back for the tests of PDFs. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <dirent.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "pdf_case.h"

/* Global because cmocka's tests of a group share it. */
struct pdf_case pdf_case;

int pdf_case_open(void **state)
{
    (void)state;
    pdf_case.arena = arena_new(512u << 20);
    pdf_case.problems = problems_new(pdf_case.arena);
    pdf_case.faces = faces_open("out/fonts", pdf_case.arena, pdf_case.problems);
    snprintf(pdf_case.folder, sizeof pdf_case.folder, "/tmp/maydeck_pdf_XXXXXX");
    return pdf_case.faces == NULL || mkdtemp(pdf_case.folder) == NULL;
}

static const char *path_of(const char *name)
{
    return text_format(pdf_case.arena, "%s/%s", pdf_case.folder, name);
}

int pdf_case_close(void **state)
{
    DIR *folder = opendir(pdf_case.folder);
    struct dirent *entry;

    (void)state;
    while (folder != NULL && (entry = readdir(folder)) != NULL)
        if (strcmp(entry->d_name, ".") != 0 && strcmp(entry->d_name, "..") != 0)
            unlink(path_of(entry->d_name));
    if (folder != NULL)
        closedir(folder);
    rmdir(pdf_case.folder);
    faces_close(pdf_case.faces);
    arena_free(pdf_case.arena);
    return 0;
}

/* ---- making pages ---- */

struct page_item text_item(enum face_role role, mpt size, mpt x, mpt baseline,
                                  const char *text)
{
    struct run *run = arena_alloc(pdf_case.arena, sizeof *run);
    uint32_t missing;

    assert_true(run_shape(pdf_case.faces, role, size, text, strlen(text), pdf_case.arena, run,
                          &missing));
    return (struct page_item){
        .kind = PAGE_TEXT, .block = BLOCK_NONE, .fill = INK_BLACK, .run = run, .baseline = baseline,
        .area = {x, baseline - size, run->width, size},
    };
}

struct page page_of(const struct page_item *items, size_t count)
{
    return (struct page){.id = "test_card", .title = "Žarko: fire", .language = "en",
                         .width = PAGE_SIDE, .height = PAGE_SIDE, .items = items, .count = count};
}

struct document document_of(const struct page *const *pages, size_t count)
{
    return (struct document){.title = "TAMARISK – emergency cards Ё", .subject = "Sub",
                             .language = "en", .pages = pages, .count = count};
}

struct bytes pdf_of(const struct page *const *pages, size_t count)
{
    struct document document = document_of(pages, count);
    struct bytes bytes = {NULL, 0};

    if (!pdf_make(&document, pdf_case.faces, pdf_case.arena, &bytes, pdf_case.problems)) {
        size_t told;
        fail_msg("%s", problems_sorted(pdf_case.problems, &told)[0].what);
    }
    return bytes;
}

void bytes_store(struct bytes bytes, const char *name)
{
    FILE *file = fopen(path_of(name), "wb");

    assert_non_null(file);
    assert_int_equal(fwrite(bytes.at, 1, bytes.length, file), bytes.length);
    assert_int_equal(fclose(file), 0);
}

void page_store(const struct page_item *items, size_t count, const char *name)
{
    struct page page = page_of(items, count);
    const struct page *pages[] = {&page};

    bytes_store(pdf_of(pages, 1), name);
}

/* ---- reading back ---- */

static char *file_read(const char *name, size_t *length)
{
    FILE *file = fopen(path_of(name), "rb");
    char *content = NULL;
    long size;

    assert_non_null(file);
    assert_int_equal(fseek(file, 0, SEEK_END), 0);
    size = ftell(file);
    rewind(file);
    assert_true(size >= 0);
    content = arena_alloc(pdf_case.arena, (size_t)size + 1);
    *length = fread(content, 1, (size_t)size, file);
    assert_int_equal(*length, size);
    assert_int_equal(fclose(file), 0);
    return content;
}

/* Runs a command in the folder; its output is returned. It must succeed and say
 * nothing on its error channel. */
char *command_read(const char *command)
{
    size_t length;
    int status = system(text_format(pdf_case.arena, "cd %s && { %s; } >out.txt 2>err.txt",
                                    pdf_case.folder, command));
    const char *errors = file_read("err.txt", &length);

    if (status != 0 || length != 0)
        fail_msg("%s: status %d: %s", command, status, errors);
    return file_read("out.txt", &length);
}

static int number_take(const char **at)
{
    int number = 0;

    while (**at < '0' || **at > '9')
        (*at)++;
    for (; **at >= '0' && **at <= '9'; (*at)++)
        number = number * 10 + (**at - '0');
    return number;
}

/* The head of a binary map as pdftoppm writes it; gives what comes behind it. */
static const unsigned char *map_read(const char *name, const char *kind, int *width, int *height)
{
    size_t length, bytes = strcmp(kind, "P6") == 0 ? 3 : 1;
    const char *content = file_read(name, &length), *at = content + 2;

    assert_memory_equal(content, kind, 2);
    *width = number_take(&at);
    *height = number_take(&at);
    assert_int_equal(number_take(&at), 255);
    assert_int_equal(length - (size_t)(at + 1 - content),
                     (size_t)*width * (size_t)*height * bytes);
    return (const unsigned char *)(at + 1);
}

static struct image image_read(const char *name)
{
    struct image image;

    image.at = map_read(name, "P5", &image.width, &image.height);
    return image;
}

struct image page_render(const char *pdf, int page)
{
    command_read(text_format(pdf_case.arena,
                             "pdftoppm -r 150 -gray -singlefile -f %d -l %d %s page", page, page,
                             pdf));
    return image_read("page.pgm");
}

void pages_render(const char *pdf)
{
    command_read(text_format(pdf_case.arena, "pdftoppm -r 150 -gray %s all", pdf));
}

/* Poppler pads the number of a page to the length of the last one. */
struct image page_image(size_t number, size_t count)
{
    int digits = snprintf(NULL, 0, "%zu", count);

    return image_read(text_format(pdf_case.arena, "all-%0*zu.pgm", digits, number));
}

struct picture page_picture(const struct page *page, int dots_an_inch)
{
    const struct page *pages[] = {page};
    struct picture picture;

    bytes_store(pdf_of(pages, 1), "picture.pdf");
    command_read(text_format(pdf_case.arena, "pdftoppm -r %d -singlefile picture.pdf picture",
                             dots_an_inch));
    picture.at = map_read("picture.ppm", "P6", &picture.width, &picture.height);
    return picture;
}

struct rgb picture_at(const struct picture *picture, int x, int y)
{
    assert_true(x >= 0 && x < picture->width && y >= 0 && y < picture->height);
    const unsigned char *at = picture->at + ((size_t)y * (size_t)picture->width + (size_t)x) * 3;
    return (struct rgb){at[0], at[1], at[2]};
}

bool dark(const struct image *image, int x, int y)
{
    return x >= 0 && x < image->width && y >= 0 && y < image->height &&
           image->at[(size_t)y * (size_t)image->width + (size_t)x] < DARK;
}

int grey_at(const struct image *image, double x_points, double y_points)
{
    int x = (int)(x_points * 150 / 72), y = (int)(y_points * 150 / 72);

    assert_true(x >= 0 && x < image->width && y >= 0 && y < image->height);
    return image->at[y * image->width + x];
}

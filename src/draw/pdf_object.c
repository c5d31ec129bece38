/* pdf_object.c - objects of a document that several files of the room make (room: draw). */
#include "pdf_private.h"

#include "promise.h"

/* What zlib keeps is cleared before each stream: 64 kB for a page, 4 for a sign. */
#define MEMORY 8
#define SMALL_STREAM 4096
#define SMALL_WINDOW 12              /* bits of as many bytes */
#define SMALL_MEMORY 4

/* Memory of zlib is the document's, as all else. */
static void *packer_alloc(void *arena, unsigned count, unsigned size)
{
    return arena_array(arena, count, size);
}

static void packer_free(void *arena, void *at)
{
    (void)arena;
    (void)at;
}

static void packer_begin(z_stream *packer, int window, int memory, struct arena *arena)
{
    *packer = (z_stream){.zalloc = packer_alloc, .zfree = packer_free, .opaque = arena};
    promise(deflateInit2(packer, PACKING_LEVEL, Z_DEFLATED, window, memory, Z_DEFAULT_STRATEGY) ==
            Z_OK);
}

void file_begin(struct pdf_file *file, HPDF_Doc document, struct arena *arena)
{
    *file = (struct pdf_file){.document = document, .arena = arena};
    packer_begin(&file->packer, MAX_WBITS, MEMORY, arena);
    packer_begin(&file->small_packer, SMALL_WINDOW, SMALL_MEMORY, arena);
}

/* Into room that the next stream takes again. */
static struct bytes packed(struct pdf_file *file, const unsigned char *bytes, size_t length)
{
    z_stream *packer = length <= SMALL_STREAM ? &file->small_packer : &file->packer;

    promise(deflateReset(packer) == Z_OK && length <= UINT32_MAX / 2);
    size_t most = deflateBound(packer, (uLong)length);
    if (most > file->room) {
        file->room = 2 * most;
        file->packed = arena_alloc(file->arena, file->room);
    }
    packer->next_in = bytes;
    packer->avail_in = (uInt)length;
    packer->next_out = file->packed;
    packer->avail_out = (uInt)most;
    promise(deflate(packer, Z_FINISH) == Z_STREAM_END);
    return (struct bytes){file->packed, most - packer->avail_out};
}

HPDF_Dict dictionary_new(HPDF_Doc document)
{
    HPDF_Dict dictionary = HPDF_Dict_New(document->mmgr);

    if (dictionary == NULL || HPDF_Xref_Add(document->xref, dictionary) != HPDF_OK)
        return NULL;
    return dictionary;
}

static HPDF_STATUS entries_write(HPDF_Dict dictionary, HPDF_Stream stream)
{
    const struct content *entries = dictionary->attr;

    return entries == NULL ? HPDF_OK
                           : HPDF_Stream_Write(stream, (const HPDF_BYTE *)entries->at,
                                               (HPDF_UINT)entries->length);
}

HPDF_Dict spelled_new(HPDF_Doc document)
{
    HPDF_Dict dictionary = dictionary_new(document);

    if (dictionary != NULL)
        dictionary->write_fn = entries_write;
    return dictionary;
}

void spelled_set(HPDF_Dict dictionary, struct content *entries)
{
    dictionary->attr = entries;
}

/* Libharu writes the filter of what it packs itself only. */
static HPDF_STATUS filter_write(HPDF_Dict dictionary, HPDF_Stream stream)
{
    (void)dictionary;
    return HPDF_Stream_WriteStr(stream, "/Filter /FlateDecode\n");
}

static bool packed_put(HPDF_Dict stream, const unsigned char *bytes, size_t length)
{
    stream->filter = HPDF_STREAM_FILTER_NONE;
    stream->write_fn = filter_write;
    return HPDF_Stream_Write(stream->stream, bytes, (HPDF_UINT)length) == HPDF_OK;
}

bool stream_fill(struct pdf_file *file, HPDF_Dict stream, const unsigned char *bytes,
                 size_t length)
{
    struct bytes small = packed(file, bytes, length);

    return packed_put(stream, small.at, small.length);
}

HPDF_Dict stream_packed_new(HPDF_Doc document, const unsigned char *bytes, size_t length)
{
    HPDF_Dict stream = HPDF_DictStream_New(document->mmgr, document->xref);

    return stream != NULL && packed_put(stream, bytes, length) ? stream : NULL;
}

HPDF_Dict stream_new(struct pdf_file *file, const unsigned char *bytes, size_t length)
{
    HPDF_Dict stream = HPDF_DictStream_New(file->document->mmgr, file->document->xref);

    return stream != NULL && stream_fill(file, stream, bytes, length) ? stream : NULL;
}

HPDF_Dict stream_plain_new(HPDF_Doc document, const unsigned char *bytes, size_t length)
{
    HPDF_Dict stream = HPDF_DictStream_New(document->mmgr, document->xref);

    if (stream == NULL ||
        HPDF_Stream_Write(stream->stream, bytes, (HPDF_UINT)length) != HPDF_OK)
        return NULL;
    stream->filter = HPDF_STREAM_FILTER_NONE;
    return stream;
}
